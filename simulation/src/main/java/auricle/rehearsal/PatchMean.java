package auricle.rehearsal;

import auricle.mesh.Topology;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/**
 * Means of a field over patches of a surface of a given area about its triangles. A patch grows
 * from its triangle over shared edges, nearest centre first, and takes of the last triangle the
 * part that it lacks: patches of one area are alike on any mesh whose triangles are not larger; a
 * triangle that is larger is a patch by itself.
 *
 * <p>For one thread.
 */
final class PatchMean {
  private final Topology topology;
  private final IntPredicate within;
  private final double[] centres;
  private final double[] areas;

  /** The patch, counted from 1, that last reached each triangle. */
  private final int[] reachedBy;

  private int patch;

  /** Triangles that the patch may take next, and how far off their centres are, mm². */
  private final int[] next;

  private final double[] far;
  private int count;

  /** Triangles of the patch, and how much of each it has, mm². */
  private final int[] taken;

  private final double[] parts;
  private int size;

  /**
   * @param positions of the vertices, x, y, z one after the other, mm
   * @param within triangles that patches may grow over
   */
  PatchMean(Topology topology, double[] positions, IntPredicate within) {
    int triangles = topology.triangleCount();
    this.topology = topology;
    this.within = within;
    centres = new double[3 * triangles];
    areas = new double[triangles];
    reachedBy = new int[triangles];
    next = new int[triangles];
    far = new double[triangles];
    taken = new int[triangles];
    parts = new double[triangles];
    for (int t = 0; t < triangles; t++) {
      for (int i = 0; i < 9; i++) {
        centres[3 * t + i % 3] += positions[3 * topology.vertex(t, i / 3) + i % 3] / 3;
      }
      areas[t] = area(t, positions);
    }
  }

  private double area(int t, double[] x) {
    int a = 3 * topology.vertex(t, 0);
    int b = 3 * topology.vertex(t, 1);
    int c = 3 * topology.vertex(t, 2);
    double square = 0;
    for (int i = 0; i < 3; i++) {
      int j = (i + 1) % 3;
      double normal =
          (x[b + i] - x[a + i]) * (x[c + j] - x[a + j])
              - (x[b + j] - x[a + j]) * (x[c + i] - x[a + i]);
      square += normal * normal;
    }
    return Math.sqrt(square) / 2;
  }

  /**
   * Grows the patch about a triangle.
   *
   * @param triangle one that patches may grow over
   * @param area_mm2 of the patch, above 0
   */
  void grow(int triangle, double area_mm2) {
    patch++;
    count = 0;
    size = 0;
    double lacking = area_mm2;
    reach(triangle, triangle);
    while (count > 0 && lacking > 0) {
      int t = nearest();
      taken[size] = t;
      parts[size] = Math.min(areas[t], lacking);
      lacking -= parts[size];
      size++;
      for (int k = 0; k < 3; k++) {
        int shared = topology.edge(t, k);
        int left = topology.leftTriangle(shared);
        reach(triangle, left == t ? topology.rightTriangle(shared) : left);
      }
    }
  }

  /** The mean over the patch last grown of a field that is constant in every triangle. */
  double mean(IntToDoubleFunction field) {
    double sum = 0;
    double covered = 0;
    for (int i = 0; i < size; i++) {
      sum += parts[i] * field.applyAsDouble(taken[i]);
      covered += parts[i];
    }
    return sum / covered;
  }

  /** Puts a triangle, or none (-1), among the next, once. */
  private void reach(int from, int t) {
    if (t >= 0 && reachedBy[t] != patch && within.test(t)) {
      reachedBy[t] = patch;
      next[count] = t;
      far[count] = square(from, t);
      count++;
    }
  }

  /** Takes out the nearest of the next. */
  private int nearest() {
    int best = 0;
    for (int i = 1; i < count; i++) {
      if (far[i] < far[best]) {
        best = i;
      }
    }
    int t = next[best];
    count--;
    next[best] = next[count];
    far[best] = far[count];
    return t;
  }

  private double square(int a, int b) {
    double square = 0;
    for (int i = 0; i < 3; i++) {
      double d = centres[3 * a + i] - centres[3 * b + i];
      square += d * d;
    }
    return square;
  }
}
