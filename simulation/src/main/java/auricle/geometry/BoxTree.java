package auricle.geometry;

import java.util.Arrays;

/**
 * Finds which of many boxes along the axes touch another: a balanced binary tree of boxes around
 * boxes. What is near what is taken once, from the boxes it is made of; when these move, {@link
 * #fit} follows in linear time.
 *
 * <p>A box is six numbers: least x, y, z, then greatest x, y, z. Queries may run side by side, but
 * not beside {@link #fit}.
 */
public final class BoxTree {
  private static final int LEAF = 6;

  private final Integer[] item;
  private final int leaves;

  /** Node k has the nodes 2 k and 2 k + 1 below it; the root is 1. */
  private final double[] nodes;

  private double[] boxes;

  /**
   * @param boxes six numbers each, known by their index
   */
  public BoxTree(double[] boxes) {
    this.boxes = boxes;
    item = new Integer[boxes.length / 6];
    Arrays.setAll(item, i -> i);
    int enough = 1;
    while (enough * LEAF < item.length) {
      enough *= 2;
    }
    leaves = enough;
    nodes = new double[12 * leaves];
    split(1, 0, leaves);
    fit(boxes);
  }

  private int start(int leaf) {
    return (int) ((long) leaf * item.length / leaves);
  }

  /** Sorts what is below a node along its longest side, so that the halves lie side by side. */
  private void split(int node, int from, int to) {
    if (to - from < 2) {
      return;
    }
    clear(node);
    for (int k = start(from); k < start(to); k++) {
      join(node, boxes, 6 * item[k]);
    }
    int axis = 0;
    for (int a = 1; a < 3; a++) {
      axis = side(node, a) > side(node, axis) ? a : axis;
    }
    int along = axis;
    Arrays.sort(
        item, start(from), start(to), (a, b) -> Double.compare(middle(a, along), middle(b, along)));
    int half = (from + to) / 2;
    split(2 * node, from, half);
    split(2 * node + 1, half, to);
  }

  private double side(int node, int axis) {
    return nodes[6 * node + 3 + axis] - nodes[6 * node + axis];
  }

  private double middle(int i, int axis) {
    return boxes[6 * i + axis] + boxes[6 * i + 3 + axis];
  }

  private void clear(int node) {
    Arrays.fill(nodes, 6 * node, 6 * node + 3, Double.POSITIVE_INFINITY);
    Arrays.fill(nodes, 6 * node + 3, 6 * node + 6, Double.NEGATIVE_INFINITY);
  }

  private void join(int node, double[] from, int at) {
    for (int a = 0; a < 3; a++) {
      nodes[6 * node + a] = Math.min(nodes[6 * node + a], from[at + a]);
      nodes[6 * node + 3 + a] = Math.max(nodes[6 * node + 3 + a], from[at + 3 + a]);
    }
  }

  /**
   * Lets the tree follow its boxes.
   *
   * @param moved as many as before; kept, not copied
   */
  public void fit(double[] moved) {
    boxes = moved;
    for (int node = 2 * leaves - 1; node > 0; node--) {
      clear(node);
      if (node < leaves) {
        join(node, nodes, 12 * node);
        join(node, nodes, 12 * node + 6);
      } else {
        for (int k = start(node - leaves); k < start(node - leaves + 1); k++) {
          join(node, boxes, 6 * item[k]);
        }
      }
    }
  }

  /**
   * Indices of the boxes that touch a box, in an order that the tree alone determines.
   *
   * @param box six numbers
   */
  public int[] touching(double[] box) {
    int[] found = new int[32];
    int count = 0;
    int[] open = new int[64];
    int opened = 1;
    open[0] = 1;
    while (opened > 0) {
      int node = open[--opened];
      if (!touch(nodes, 6 * node, box)) {
        continue;
      }
      if (node < leaves) {
        open[opened++] = 2 * node + 1;
        open[opened++] = 2 * node;
        continue;
      }
      for (int k = start(node - leaves); k < start(node - leaves + 1); k++) {
        if (touch(boxes, 6 * item[k], box)) {
          found = count == found.length ? Arrays.copyOf(found, 2 * count) : found;
          found[count++] = item[k];
        }
      }
    }
    return Arrays.copyOf(found, count);
  }

  private static boolean touch(double[] of, int at, double[] box) {
    return of[at] <= box[3]
        && of[at + 1] <= box[4]
        && of[at + 2] <= box[5]
        && of[at + 3] >= box[0]
        && of[at + 4] >= box[1]
        && of[at + 5] >= box[2];
  }
}
