package auricle.geometry;

import java.util.Arrays;

/**
 * Finds which of many spheres come near a point: sorted along one axis, of which only a window is
 * looked at.
 */
public final class NearSpheres {
  private final double[] x;
  private final double[] y;
  private final double[] z;
  private final double[] radius;
  private final int[] name;
  private final double widest;

  /**
   * @param spheres centre x, y, z and radius of each, {@code double[4]}; each is known by its index
   */
  public NearSpheres(double[][] spheres) {
    int n = spheres.length;
    Integer[] order = new Integer[n];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, (a, b) -> Double.compare(spheres[a][2], spheres[b][2]));
    x = new double[n];
    y = new double[n];
    z = new double[n];
    radius = new double[n];
    name = new int[n];
    double largest = 0;
    for (int i = 0; i < n; i++) {
      double[] sphere = spheres[order[i]];
      x[i] = sphere[0];
      y[i] = sphere[1];
      z[i] = sphere[2];
      radius[i] = sphere[3];
      name[i] = order[i];
      largest = Math.max(largest, sphere[3]);
    }
    widest = largest;
  }

  /**
   * The sphere around points.
   *
   * @param margin added to its radius
   */
  public static double[] around(double margin, double[]... points) {
    double[] sphere = new double[4];
    for (double[] p : points) {
      for (int c = 0; c < 3; c++) {
        sphere[c] += p[c] / points.length;
      }
    }
    for (double[] p : points) {
      double dx = p[0] - sphere[0];
      double dy = p[1] - sphere[1];
      double dz = p[2] - sphere[2];
      sphere[3] = Math.max(sphere[3], Math.sqrt(dx * dx + dy * dy + dz * dz));
    }
    sphere[3] += margin;
    return sphere;
  }

  /** Indices of the spheres no farther than a reach from the point, in a fixed order. */
  public int[] within(double reach, double[] point) {
    int[] found = new int[16];
    int count = 0;
    for (int i = first(point[2] - reach - widest);
        i < z.length && z[i] <= point[2] + reach + widest;
        i++) {
      double limit = reach + radius[i];
      double dx = x[i] - point[0];
      double dy = y[i] - point[1];
      double dz = z[i] - point[2];
      if (dx * dx + dy * dy + dz * dz <= limit * limit) {
        found = count == found.length ? Arrays.copyOf(found, 2 * count) : found;
        found[count++] = name[i];
      }
    }
    return Arrays.copyOf(found, count);
  }

  private int first(double height) {
    int at = Arrays.binarySearch(z, height);
    int from = at < 0 ? -at - 1 : at;
    while (from > 0 && z[from - 1] >= height) {
      from--;
    }
    return from;
  }
}
