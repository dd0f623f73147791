package auricle.energy;

import auricle.mesh.Directors;
import auricle.mesh.PlateShape;
import auricle.mesh.RestShape;
import auricle.mesh.Topology;
import auricle.mesh.Unknowns;
import java.util.Arrays;

/**
 * Curvature of one triangle from the tilts of its corner directors against its edges.
 *
 * <p>Tilts z = (d_0·e_0, d_0·e_1, d_1·e_0, d_1·e_1, d_2·e_0, d_2·e_1), mm; d_i·e_2 follows from e_0
 * + e_1 + e_2 = 0. They vanish for no rigid motion and change under none, so strain-free rotation
 * of any size costs nothing.
 *
 * <p>Director field on the plate, with barycentric L, corner tilts in the plane of the plate and a
 * bubble along each edge k from j to l that makes the edge a cubic with its director at right
 * angles at both ends and in the middle (Batoz, Bathe and Ho 1980, eq. 21-24):
 *
 * <pre> d(L) = Σ_i L_i d_i + Σ_k 4 L_j L_l c_k e_k,   c_k = −¾ (d_j·e_k + d_l·e_k) / |ē_k|² </pre>
 *
 * and K = sym ∇d = (Kxx, Kyy, 2 Kxy) in the axes of the plate: linear in z at every point.
 *
 * <p>Rest lengths stand for present ones in c_k and in the gradients: of the order of strain times
 * curvature, left out as in any small-strain shell theory (Koiter 1966).
 */
final class TiltCurvature {
  /** Number of unknowns of a triangle. */
  static final int SIZE = 15;

  private static final int N = SIZE;
  private static final ThreadLocal<TiltCurvature> LOCAL =
      ThreadLocal.withInitial(TiltCurvature::new);

  private final double[] d = new double[3 * Directors.BLOCK];
  private final double[] e = new double[6];
  private final double[] z = new double[6];
  private final double[] force = new double[6];
  private final double[] slope = new double[6 * N];
  private final double[] product = new double[6 * N];

  /** The workspace of the calling thread. */
  static TiltCurvature local() {
    return LOCAL.get();
  }

  /**
   * The unknowns of triangle t: x, y, z of corners 0, 1, 2, then w1, w2 of their directors (15
   * places).
   */
  static int[] stencil(Topology topology, Unknowns unknowns, int t) {
    int[] stencil = new int[SIZE];
    for (int i = 0; i < 3; i++) {
      int vertex = topology.vertex(t, i);
      for (int c = 0; c < 3; c++) {
        stencil[3 * i + c] = unknowns.vertex(vertex) + c;
      }
      stencil[9 + 2 * i] = unknowns.director(vertex);
      stencil[10 + 2 * i] = unknowns.director(vertex) + 1;
    }
    return stencil;
  }

  /** Rest tilts of a triangle in the order of z, between those at load factor 0 and 1. */
  static void rest(RestShape start, RestShape grown, double factor, int t, double[] out, int at) {
    for (int i = 0; i < 3; i++) {
      for (int k = 0; k < 2; k++) {
        double from = start.tilt(t, i, k);
        out[at + 2 * i + k] = from + factor * (grown.tilt(t, i, k) - from);
      }
    }
  }

  /** The 3 x 6 matrix from z to curvature at the middle of edge g (L_g = 0, others ½). */
  static double[] atEdgeMiddle(PlateShape plate, int g) {
    double[] l = {0.5, 0.5, 0.5};
    l[g] = 0;
    return at(plate, l);
  }

  /**
   * The 3 x 6 matrix from z to the mean curvature of the triangle, which is that at its centroid.
   */
  static double[] mean(PlateShape plate) {
    return at(plate, new double[] {1 / 3.0, 1 / 3.0, 1 / 3.0});
  }

  private static double[] at(PlateShape plate, double[] l) {
    double[] c = new double[18];
    // in-plane components of d_i from its tilts against edges 0 and 1; edge 0 is the x axis
    double gx = 1 / plate.edgeX(0);
    double hx = -plate.edgeX(1) / (plate.edgeX(0) * plate.edgeY(1));
    double hy = 1 / plate.edgeY(1);
    for (int i = 0; i < 3; i++) {
      addGradient(c, 2 * i, plate.slopeX(i), plate.slopeY(i), gx, hx);
      addGradient(c, 2 * i + 1, plate.slopeX(i), plate.slopeY(i), 0, hy);
    }
    for (int k = 0; k < 3; k++) {
      addBubble(c, plate, k, l);
    }
    return c;
  }

  /** Adds sym(v ⊗ ∇L) to column z of c. */
  private static void addGradient(double[] c, int z, double lx, double ly, double vx, double vy) {
    c[z] += lx * vx;
    c[6 + z] += ly * vy;
    c[12 + z] += ly * vx + lx * vy;
  }

  private static void addBubble(double[] c, PlateShape plate, int k, double[] l) {
    int j = (k + 1) % 3;
    int m = (k + 2) % 3;
    double hx = 4 * (l[j] * plate.slopeX(m) + l[m] * plate.slopeX(j));
    double hy = 4 * (l[j] * plate.slopeY(m) + l[m] * plate.slopeY(j));
    double factor = -0.75 / (plate.length(k) * plate.length(k));
    for (int i : new int[] {j, m}) {
      if (k < 2) {
        addGradient(c, 2 * i + k, hx, hy, factor * plate.edgeX(k), factor * plate.edgeY(k));
      } else {
        addGradient(c, 2 * i, hx, hy, -factor * plate.edgeX(k), -factor * plate.edgeY(k));
        addGradient(c, 2 * i + 1, hx, hy, -factor * plate.edgeX(k), -factor * plate.edgeY(k));
      }
    }
  }

  /** Reads directors and edges at u and computes z; with slopes, also ∂z/∂(stencil). */
  void measure(int[] stencil, double[] u, Directors directors, boolean slopes) {
    int firstDirector = 3 * directors.unknowns().vertexCount();
    for (int i = 0; i < 3; i++) {
      int director = (stencil[9 + 2 * i] - firstDirector) / 2;
      if (slopes) {
        directors.derivatives(director, u, d, Directors.BLOCK * i);
      } else {
        directors.value(director, u, d, Directors.BLOCK * i);
      }
    }
    for (int c = 0; c < 3; c++) {
      e[c] = u[stencil[6 + c]] - u[stencil[3 + c]];
      e[3 + c] = u[stencil[c]] - u[stencil[6 + c]];
    }
    for (int i = 0; i < 3; i++) {
      z[2 * i] = dot(d, Directors.BLOCK * i, e, 0);
      z[2 * i + 1] = dot(d, Directors.BLOCK * i, e, 3);
    }
    if (slopes) {
      slopes();
    }
  }

  private void slopes() {
    Arrays.fill(slope, 0);
    for (int i = 0; i < 3; i++) {
      int b = Directors.BLOCK * i;
      for (int k = 0; k < 2; k++) {
        int row = N * (2 * i + k);
        int start = k == 0 ? 3 : 6;
        int end = k == 0 ? 6 : 0;
        for (int c = 0; c < 3; c++) {
          slope[row + start + c] = -d[b + c];
          slope[row + end + c] = d[b + c];
        }
        slope[row + 9 + 2 * i] = dot(d, b + 3, e, 3 * k);
        slope[row + 10 + 2 * i] = dot(d, b + 6, e, 3 * k);
      }
    }
  }

  /** ½ (z − z̄)ᵀ Q (z − z̄) − pᵀ (z − z̄); keeps the generalised forces Q (z − z̄) − p. */
  double energy(double[] form, int at, double[] rest, double[] pull, int restAt) {
    double energy = 0;
    for (int i = 0; i < 6; i++) {
      double sum = -pull[restAt + i];
      for (int j = 0; j < 6; j++) {
        sum += form[at + 6 * i + j] * (z[j] - rest[restAt + j]);
      }
      force[i] = sum;
      energy += 0.5 * (sum - pull[restAt + i]) * (z[i] - rest[restAt + i]);
    }
    return energy;
  }

  /** Curvature C (z − z̄), three numbers. */
  void curvature(double[] c, int at, double[] rest, int restAt, double[] out) {
    for (int a = 0; a < 3; a++) {
      out[a] = 0;
      for (int j = 0; j < 6; j++) {
        out[a] += c[at + 6 * a + j] * (z[j] - rest[restAt + j]);
      }
    }
  }

  /** row · (z − z̄). */
  double along(double[] row, double[] rest, int restAt) {
    double sum = 0;
    for (int j = 0; j < 6; j++) {
      sum += row[j] * (z[j] - rest[restAt + j]);
    }
    return sum;
  }

  /** Adds to the generalised forces of {@link #energy}. */
  void addForce(double factor, double[] row) {
    for (int j = 0; j < 6; j++) {
      force[j] += factor * row[j];
    }
  }

  /** Row i of ∂z/∂(stencil) starts at 15 i. */
  double[] slope() {
    return slope;
  }

  /** Overwrites the gradient with that of the energy measured last. */
  void gradient(double[] gradient) {
    for (int r = 0; r < N; r++) {
      double g = 0;
      for (int i = 0; i < 6; i++) {
        g += force[i] * slope[N * i + r];
      }
      gradient[r] = g;
    }
  }

  /** Overwrites gradient and Hessian with those of the energy measured last. */
  void addQuadratic(double[] form, int at, double[] gradient, double[] hessian) {
    multiplyForm(form, at);
    gradient(gradient);
    for (int r = 0; r < N; r++) {
      for (int c = 0; c <= r; c++) {
        double sum = 0;
        for (int i = 0; i < 6; i++) {
          sum += slope[N * i + r] * product[N * i + c];
        }
        hessian[N * r + c] = sum;
      }
    }
    addCurving(force, hessian, N, IDENTITY);
    for (int r = 0; r < N; r++) {
      for (int c = 0; c < r; c++) {
        hessian[N * c + r] = hessian[N * r + c];
      }
    }
  }

  private static final int[] IDENTITY = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14};

  private void multiplyForm(double[] form, int at) {
    for (int i = 0; i < 6; i++) {
      for (int c = 0; c < N; c++) {
        double sum = 0;
        for (int j = 0; j < 6; j++) {
          sum += form[at + 6 * i + j] * slope[N * j + c];
        }
        product[N * i + c] = sum;
      }
    }
  }

  /**
   * Adds Σ f_i ∂²z_i to the lower triangle of a Hessian (to both triangles where places are
   * mapped).
   *
   * @param place where each of the 15 places of this triangle stands in that Hessian, of order n
   */
  void addCurving(double[] f, double[] hessian, int n, int[] place) {
    for (int i = 0; i < 3; i++) {
      int b = Directors.BLOCK * i;
      int w = 9 + 2 * i;
      for (int k = 0; k < 2; k++) {
        double fi = f[2 * i + k];
        int start = k == 0 ? 3 : 6;
        int end = k == 0 ? 6 : 0;
        for (int a = 0; a < 2; a++) {
          for (int c = 0; c < 3; c++) {
            double da = fi * d[b + 3 + 3 * a + c];
            put(hessian, n, place[w + a], place[end + c], da);
            put(hessian, n, place[w + a], place[start + c], -da);
          }
        }
        hessian[n * place[w] + place[w]] += fi * dot(d, b + 9, e, 3 * k);
        put(hessian, n, place[w + 1], place[w], fi * dot(d, b + 12, e, 3 * k));
        hessian[n * place[w + 1] + place[w + 1]] += fi * dot(d, b + 15, e, 3 * k);
      }
    }
  }

  private static void put(double[] hessian, int n, int r, int c, double value) {
    hessian[n * Math.max(r, c) + Math.min(r, c)] += value;
  }

  private static double dot(double[] a, int i, double[] b, int j) {
    return a[i] * b[j] + a[i + 1] * b[j + 1] + a[i + 2] * b[j + 2];
  }
}
