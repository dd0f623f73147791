package auricle.energy;

import auricle.mesh.Directors;
import java.util.Arrays;

/**
 * Strain of one {@link EdgeDomain} from the arc lengths of its edges.
 *
 * <p>The arc of an edge from i to j: s² = e·e + (2 p² − p r + 2 r²) / 15 with e = x_j − x_i, p =
 * d_i·e, r = d_j·e: the length of the cubic through both ends that is at right angles to both
 * directors, to second order in the tilts (for a circle the error is of fourth order). Strain E = C
 * s² − Ē.
 *
 * <p>Derivatives by e: 2 e + [(4p − r) d_i + (4r − p) d_j] / 15; by a tilt of d_i: (4p − r)
 * (d_i,a·e) / 15.
 */
final class EdgeArcs {
  private static final ThreadLocal<EdgeArcs> LOCAL = ThreadLocal.withInitial(EdgeArcs::new);

  private final double[] d = new double[4 * Directors.BLOCK];
  private final double[] e = new double[15];
  private final double[] start = new double[5];
  private final double[] end = new double[5];
  private final double[] strain = new double[3];
  private final double[] stress = new double[3];
  private final double[] slope = new double[60];
  private final double[] product = new double[60];
  private final double[] byEdge = new double[7];

  /** The workspace of the calling thread. */
  static EdgeArcs local() {
    return LOCAL.get();
  }

  /** Reads directors and edges at u and computes the strain; with slopes, also ∂E/∂(stencil). */
  void measure(EdgeDomain domain, double[] u, Directors directors, boolean slopes) {
    read(domain, u, directors, slopes);
    strain(domain, u);
    if (slopes) {
      slopes(domain);
    }
  }

  private void read(EdgeDomain domain, double[] u, Directors directors, boolean slopes) {
    for (int i = 0; i < domain.vertexCount(); i++) {
      if (slopes) {
        directors.derivatives(domain.vertex(i), u, d, Directors.BLOCK * i);
      } else {
        directors.value(domain.vertex(i), u, d, Directors.BLOCK * i);
      }
    }
  }

  private void strain(EdgeDomain domain, double[] u) {
    for (int a = 0; a < 3; a++) {
      strain[a] = -domain.restStrain(a);
    }
    int[] stencil = domain.stencil();
    for (int k = 0; k < domain.edgeCount(); k++) {
      measureEdge(domain, k, u, stencil);
    }
  }

  private void measureEdge(EdgeDomain domain, int k, double[] u, int[] stencil) {
    int i = EdgeDomain.EDGE_START[k];
    int j = EdgeDomain.EDGE_END[k];
    for (int c = 0; c < 3; c++) {
      e[3 * k + c] = u[stencil[3 * j + c]] - u[stencil[3 * i + c]];
    }
    double p = dot(d, Directors.BLOCK * i, e, 3 * k);
    double r = dot(d, Directors.BLOCK * j, e, 3 * k);
    start[k] = p;
    end[k] = r;
    double arc = dot(e, 3 * k, e, 3 * k) + (2 * p * p - p * r + 2 * r * r) / 15;
    for (int a = 0; a < 3; a++) {
      strain[a] += domain.strainOfArc(a, k) * arc;
    }
  }

  private void slopes(EdgeDomain domain) {
    int n = domain.vertexCount();
    Arrays.fill(slope, 0);
    for (int k = 0; k < domain.edgeCount(); k++) {
      slopeOfEdge(k);
      for (int a = 0; a < 3; a++) {
        addForce(k, n, domain.strainOfArc(a, k), slope, 5 * n * a);
      }
    }
  }

  /** ∂s² of edge k by its vector and by the tilts of both its directors. */
  private void slopeOfEdge(int k) {
    int bi = Directors.BLOCK * EdgeDomain.EDGE_START[k];
    int bj = Directors.BLOCK * EdgeDomain.EDGE_END[k];
    double fp = (4 * start[k] - end[k]) / 15;
    double fr = (4 * end[k] - start[k]) / 15;
    for (int c = 0; c < 3; c++) {
      byEdge[c] = 2 * e[3 * k + c] + fp * d[bi + c] + fr * d[bj + c];
    }
    byEdge[3] = fp * dot(d, bi + 3, e, 3 * k);
    byEdge[4] = fp * dot(d, bi + 6, e, 3 * k);
    byEdge[5] = fr * dot(d, bj + 3, e, 3 * k);
    byEdge[6] = fr * dot(d, bj + 6, e, 3 * k);
  }

  /** Adds f ∂s² of the edge looked at last to a row of n vertices' places. */
  private void addForce(int k, int n, double f, double[] out, int row) {
    int i = EdgeDomain.EDGE_START[k];
    int j = EdgeDomain.EDGE_END[k];
    for (int c = 0; c < 3; c++) {
      out[row + 3 * i + c] -= f * byEdge[c];
      out[row + 3 * j + c] += f * byEdge[c];
    }
    out[row + 3 * n + 2 * i] += f * byEdge[3];
    out[row + 3 * n + 2 * i + 1] += f * byEdge[4];
    out[row + 3 * n + 2 * j] += f * byEdge[5];
    out[row + 3 * n + 2 * j + 1] += f * byEdge[6];
  }

  /** ½ w E : A : E, with layers as they carry; keeps the derivative by E. */
  double energy(EdgeDomain domain) {
    double energy = domain.stored();
    for (int a = 0; a < 3; a++) {
      stress[a] = -domain.pull(a);
      for (int b = 0; b < 3; b++) {
        stress[a] += domain.stiffness(a, b) * strain[b];
      }
      energy += 0.5 * (stress[a] - domain.pull(a)) * strain[a];
    }
    return energy;
  }

  /** The energy at u with its gradient alone. */
  double gradient(EdgeDomain domain, double[] u, Directors directors, double[] gradient) {
    read(domain, u, directors, true);
    strain(domain, u);
    double energy = energy(domain);
    Arrays.fill(gradient, 0, domain.stencil().length, 0);
    for (int k = 0; k < domain.edgeCount(); k++) {
      slopeOfEdge(k);
      addForce(k, domain.vertexCount(), force(domain, k, stress), gradient, 0);
    }
    return energy;
  }

  /** Overwrites the gradient with that of the energy measured last. */
  void gradient(EdgeDomain domain, double[] gradient) {
    int size = domain.stencil().length;
    for (int r = 0; r < size; r++) {
      gradient[r] =
          stress[0] * slope[r] + stress[1] * slope[size + r] + stress[2] * slope[2 * size + r];
    }
  }

  /** Overwrites the lower triangle of the Hessian with ∂Eᵀ A ∂E. */
  void material(EdgeDomain domain, double[] hessian) {
    int size = domain.stencil().length;
    for (int a = 0; a < 3; a++) {
      double w0 = domain.stiffness(a, 0);
      double w1 = domain.stiffness(a, 1);
      double w2 = domain.stiffness(a, 2);
      for (int c = 0; c < size; c++) {
        product[size * a + c] = w0 * slope[c] + w1 * slope[size + c] + w2 * slope[2 * size + c];
      }
    }
    for (int r = 0; r < size; r++) {
      double s0 = slope[r];
      double s1 = slope[size + r];
      double s2 = slope[2 * size + r];
      for (int c = 0; c <= r; c++) {
        hessian[size * r + c] =
            s0 * product[c] + s1 * product[size + c] + s2 * product[2 * size + c];
      }
    }
  }

  /** Takes the stress of a strain for {@link #addCurving(EdgeDomain, double[])}. */
  void expect(EdgeDomain domain, double[] expected, int at) {
    for (int a = 0; a < 3; a++) {
      stress[a] = -domain.pull(a);
      for (int b = 0; b < 3; b++) {
        stress[a] += domain.stiffness(a, b) * expected[at + b];
      }
    }
  }

  /** Completes the Hessian by Σ stress · ∂²E. */
  void addCurving(EdgeDomain domain, double[] hessian) {
    addCurving(domain, stress, hessian);
    mirror(hessian, domain.stencil().length);
  }

  /** Strain E(from) + ∂E (to − from), three numbers; both in the same frames. */
  void foresee(
      EdgeDomain domain, double[] from, double[] to, Directors directors, double[] out, int at) {
    read(domain, from, directors, true);
    strain(domain, from);
    System.arraycopy(strain, 0, out, at, 3);
    for (int k = 0; k < domain.edgeCount(); k++) {
      slopeOfEdge(k);
      double change = change(domain, k, from, to);
      for (int a = 0; a < 3; a++) {
        out[at + a] += domain.strainOfArc(a, k) * change;
      }
    }
  }

  /** ∂s² (to − from) of the edge looked at last. */
  private double change(EdgeDomain domain, int k, double[] from, double[] to) {
    int[] stencil = domain.stencil();
    int n = domain.vertexCount();
    int i = EdgeDomain.EDGE_START[k];
    int j = EdgeDomain.EDGE_END[k];
    double sum = 0;
    for (int c = 0; c < 3; c++) {
      int start = stencil[3 * i + c];
      int end = stencil[3 * j + c];
      sum += byEdge[c] * (to[end] - from[end] - to[start] + from[start]);
    }
    for (int w = 0; w < 2; w++) {
      int start = stencil[3 * n + 2 * i + w];
      int end = stencil[3 * n + 2 * j + w];
      sum += byEdge[3 + w] * (to[start] - from[start]) + byEdge[5 + w] * (to[end] - from[end]);
    }
    return sum;
  }

  static void mirror(double[] hessian, int size) {
    for (int r = 0; r < size; r++) {
      for (int c = 0; c < r; c++) {
        hessian[size * c + r] = hessian[size * r + c];
      }
    }
  }

  /** Adds Σ_k (force · C)_k ∂²s²_k to the lower triangle of the domain's Hessian. */
  void addCurving(EdgeDomain domain, double[] force, double[] hessian) {
    for (int k = 0; k < domain.edgeCount(); k++) {
      addEdgeCurving(domain, k, force(domain, k, force), hessian);
    }
  }

  /** What a stress makes of the squared arc of edge k. */
  private static double force(EdgeDomain domain, int k, double[] stress) {
    double f = 0;
    for (int a = 0; a < 3; a++) {
      f += stress[a] * domain.strainOfArc(a, k);
    }
    return f;
  }

  private void addEdgeCurving(EdgeDomain domain, int k, double f, double[] hessian) {
    int n = domain.vertexCount();
    int size = 5 * n;
    int i = EdgeDomain.EDGE_START[k];
    int j = EdgeDomain.EDGE_END[k];
    int bi = Directors.BLOCK * i;
    int bj = Directors.BLOCK * j;
    for (int r = 0; r < 3; r++) {
      for (int c = 0; c <= r; c++) {
        double di = (4 * d[bi + c] - d[bj + c]) / 15;
        double dj = (4 * d[bj + c] - d[bi + c]) / 15;
        double h = f * ((r == c ? 2 : 0) + d[bi + r] * di + d[bj + r] * dj);
        hessian[size * (3 * i + r) + 3 * i + c] += h;
        hessian[size * (3 * j + r) + 3 * j + c] += h;
        int lower = Math.max(i, j);
        int upper = Math.min(i, j);
        hessian[size * (3 * lower + r) + 3 * upper + c] -= h;
        if (r != c) {
          hessian[size * (3 * lower + c) + 3 * upper + r] -= h;
        }
      }
    }
    double fp = f * (4 * start[k] - end[k]) / 15;
    double fr = f * (4 * end[k] - start[k]) / 15;
    tiltRows(hessian, size, n, k, i, bi, bj, f, fp);
    tiltRows(hessian, size, n, k, j, bj, bi, f, fr);
    int wi = 3 * n + 2 * i;
    int wj = 3 * n + 2 * j;
    tiltBlock(hessian, size, wi, bi, k, f, fp);
    tiltBlock(hessian, size, wj, bj, k, f, fr);
    for (int a = 0; a < 2; a++) {
      for (int b = 0; b < 2; b++) {
        double h = -f / 15 * dot(d, bi + 3 + 3 * a, e, 3 * k) * dot(d, bj + 3 + 3 * b, e, 3 * k);
        int row = Math.max(wi + a, wj + b);
        int column = Math.min(wi + a, wj + b);
        hessian[size * row + column] += h;
      }
    }
  }

  /** Tilts of director i against the edge vector. */
  private void tiltRows(
      double[] hessian, int size, int n, int k, int i, int bi, int bj, double f, double fp) {
    int from = EdgeDomain.EDGE_START[k];
    int to = EdgeDomain.EDGE_END[k];
    for (int a = 0; a < 2; a++) {
      int row = size * (3 * n + 2 * i + a);
      double turn = f * dot(d, bi + 3 + 3 * a, e, 3 * k) / 15;
      for (int c = 0; c < 3; c++) {
        double h = turn * (4 * d[bi + c] - d[bj + c]) + fp * d[bi + 3 + 3 * a + c];
        hessian[row + 3 * to + c] += h;
        hessian[row + 3 * from + c] -= h;
      }
    }
  }

  /** Tilts of one director against themselves. */
  private void tiltBlock(double[] hessian, int size, int w, int b, int k, double f, double fp) {
    double d1 = dot(d, b + 3, e, 3 * k);
    double d2 = dot(d, b + 6, e, 3 * k);
    double g = 4 * f / 15;
    hessian[size * w + w] += g * d1 * d1 + fp * dot(d, b + 9, e, 3 * k);
    hessian[size * (w + 1) + w] += g * d1 * d2 + fp * dot(d, b + 12, e, 3 * k);
    hessian[size * (w + 1) + w + 1] += g * d2 * d2 + fp * dot(d, b + 15, e, 3 * k);
  }

  /** Strain of the domain measured last; shared. */
  double[] strain() {
    return strain;
  }

  /** Row a of ∂E/∂(stencil) starts at a times the stencil's length. */
  double[] slope() {
    return slope;
  }

  private static double dot(double[] a, int i, double[] b, int j) {
    return a[i] * b[j] + a[i + 1] * b[j + 1] + a[i + 2] * b[j + 2];
  }
}
