package auricle.analysis;

import auricle.diagnostics.Findings;
import auricle.geometry.Vectors;
import auricle.mesh.Directors;
import auricle.mesh.ShellMesh;
import java.util.ArrayList;
import java.util.List;

/**
 * Which motions of the shell as a rigid body the supports leave free. Every motion that a support
 * prevents is a row over three translations and three rotations (times the size of the shell) about
 * its middle; their Gram matrix has full rank if nothing is left free.
 */
final class RigidMotions {
  private static final double NONE = 1e-10;
  private static final List<String> NAMES =
      List.of(
          "move along x",
          "move along y",
          "move along z",
          "turn about an axis along x",
          "turn about an axis along y",
          "turn about an axis along z");

  private final ShellMesh mesh;
  private final double size;
  private final double[] middle = new double[3];
  private final double[][] gram = new double[6][6];

  RigidMotions(ShellMesh mesh) {
    this.mesh = mesh;
    this.size = GeometricSelectors.size(mesh);
    for (int v = 0; v < mesh.vertexCount(); v++) {
      for (int c = 0; c < 3; c++) {
        middle[c] += mesh.position(v, c) / mesh.vertexCount();
      }
    }
  }

  /** A coordinate is held; its number as an unknown. */
  void holdCoordinate(int unknown) {
    double[] direction = new double[3];
    direction[unknown % 3] = 1;
    holdAlong(unknown / 3, direction);
  }

  /** A vertex is held along a unit direction: δx·n = t·n + (ω × r)·n = t·n + ω·(r × n). */
  void holdAlong(int vertex, double[] n) {
    double[] r = new double[3];
    for (int c = 0; c < 3; c++) {
      r[c] = (mesh.position(vertex, c) - middle[c]) / size;
    }
    add(n, Vectors.cross(r, n));
  }

  /** A tilt is held: δd·m = (ω × d)·m = ω·(d × m). */
  void holdTilt(Directors directors, int director, int k) {
    double[] d = new double[3];
    double[] m = new double[3];
    for (int c = 0; c < 3; c++) {
      d[c] = directors.frame(director, 0, c);
      m[c] = directors.frame(director, k + 1, c);
    }
    add(new double[3], Vectors.cross(d, m));
  }

  private void add(double[] move, double[] turn) {
    double[] row = {move[0], move[1], move[2], turn[0], turn[1], turn[2]};
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        gram[i][j] += row[i] * row[j];
      }
    }
  }

  /** A finding if a motion is left free. */
  void check(Findings findings) {
    double largest = 0;
    for (int i = 0; i < 6; i++) {
      largest = Math.max(largest, gram[i][i]);
    }
    int free = largest == 0 ? 6 : 6 - rank(NONE * largest);
    if (free > 0) {
      findings.error(
          "/supports",
          "the supports leave %d %s of the whole shell free: %s"
              .formatted(free, free == 1 ? "motion" : "motions", free(NONE * largest)),
          "supports against every motion of the shell as a rigid body",
          "Hold more vertices or directions; a free shell under balanced loads needs three points"
              + " held in six directions.");
    }
  }

  private String free(double least) {
    double[][] turns = copy();
    boolean[] done = new boolean[6];
    for (int i = 0; i < 3; i++) {
      // a turn about an axis anywhere is one about the middle and a move: moves are eliminated
      eliminate(turns, done, pivot(turns, done, 3), least);
    }
    List<String> names = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      if ((i < 3 ? gram : turns)[i][i] <= least) {
        names.add(NAMES.get(i));
      }
    }
    return names.isEmpty() ? "moves and turns combined" : "it can " + String.join(", ", names);
  }

  private double[][] copy() {
    double[][] a = new double[6][];
    for (int i = 0; i < 6; i++) {
      a[i] = gram[i].clone();
    }
    return a;
  }

  /** The largest diagonal entry not done yet, among the first few. */
  private static int pivot(double[][] a, boolean[] done, int first) {
    int pivot = -1;
    for (int i = 0; i < first; i++) {
      pivot = !done[i] && (pivot < 0 || a[i][i] > a[pivot][pivot]) ? i : pivot;
    }
    return pivot;
  }

  /** Takes a pivot out of the rest, unless it is nothing. */
  private static boolean eliminate(double[][] a, boolean[] done, int pivot, double least) {
    done[pivot] = true;
    if (!(a[pivot][pivot] > least)) {
      return false;
    }
    for (int i = 0; i < 6; i++) {
      double factor = done[i] ? 0 : a[i][pivot] / a[pivot][pivot];
      for (int j = 0; j < 6; j++) {
        a[i][j] -= factor * a[pivot][j];
      }
    }
    return true;
  }

  /** Number of pivots above a limit, by elimination with full pivoting. */
  private int rank(double least) {
    double[][] a = copy();
    boolean[] done = new boolean[6];
    int rank = 0;
    while (rank < 6 && eliminate(a, done, pivot(a, done, 6), least)) {
      rank++;
    }
    return rank;
  }
}
