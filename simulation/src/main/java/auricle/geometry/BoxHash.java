package auricle.geometry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Finds which of many axis-parallel boxes overlap a given one, by hashing them into the cells of a
 * uniform grid whose cell is as wide as the widest box. Results are ascending, so they do not
 * depend on hashing order.
 *
 * <p>A box is {@code double[6]}: lower x, y, z, then upper x, y, z.
 */
public final class BoxHash {
  private final double cell;
  private final double[][] boxes;
  private final Map<Long, List<Integer>> cells = new HashMap<>();

  /** Hashes the boxes; each is known by its index. */
  public BoxHash(double[][] boxes) {
    this.boxes = boxes;
    double widest = Double.MIN_NORMAL;
    for (double[] box : boxes) {
      for (int c = 0; c < 3; c++) {
        widest = Math.max(widest, box[c + 3] - box[c]);
      }
    }
    this.cell = widest;
    for (int i = 0; i < boxes.length; i++) {
      for (long key : keys(boxes[i])) {
        cells.computeIfAbsent(key, k -> new ArrayList<>()).add(i);
      }
    }
  }

  /** Indices of the boxes that overlap or touch the given one, ascending. */
  public List<Integer> overlapping(double[] box) {
    TreeSet<Integer> found = new TreeSet<>();
    for (long key : keys(box)) {
      for (int i : cells.getOrDefault(key, List.of())) {
        if (overlap(boxes[i], box)) {
          found.add(i);
        }
      }
    }
    return List.copyOf(found);
  }

  /** The box around points, widened by a margin on every side. */
  public static double[] around(double margin, double[]... points) {
    double[] box = new double[6];
    for (int c = 0; c < 3; c++) {
      box[c] = Double.POSITIVE_INFINITY;
      box[c + 3] = Double.NEGATIVE_INFINITY;
      for (double[] point : points) {
        box[c] = Math.min(box[c], point[c] - margin);
        box[c + 3] = Math.max(box[c + 3], point[c] + margin);
      }
    }
    return box;
  }

  private List<Long> keys(double[] box) {
    List<Long> keys = new ArrayList<>();
    for (long x = place(box[0]); x <= place(box[3]); x++) {
      for (long y = place(box[1]); y <= place(box[4]); y++) {
        for (long z = place(box[2]); z <= place(box[5]); z++) {
          keys.add(((x & 0x1FFFFF) << 42) | ((y & 0x1FFFFF) << 21) | (z & 0x1FFFFF));
        }
      }
    }
    return keys;
  }

  private long place(double coordinate) {
    return (long) Math.floor(coordinate / cell);
  }

  private static boolean overlap(double[] a, double[] b) {
    for (int c = 0; c < 3; c++) {
      if (a[c] > b[c + 3] || b[c] > a[c + 3]) {
        return false;
      }
    }
    return true;
  }
}
