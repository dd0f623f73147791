package auricle.energy;

import auricle.mesh.PlateShape;

/** Strain and curvature of a plate, (xx, yy, 2 xy) by rows, in one set of axes or another. */
final class StrainAxes {
  private StrainAxes() {}

  /** Strain (Exx, Eyy, 2 Exy) in axes of the plate from E(e_k, e_k), k = 0, 1, 2; 3 x 3. */
  static double[] ofLengths(PlateShape p) {
    double[][] m = new double[3][];
    for (int k = 0; k < 3; k++) {
      double x = p.edgeX(k);
      double y = p.edgeY(k);
      m[k] = new double[] {x * x, y * y, x * y};
    }
    double[] inverse = new double[9];
    double det = 0;
    for (int a = 0; a < 3; a++) {
      int b = (a + 1) % 3;
      int c = (a + 2) % 3;
      for (int k = 0; k < 3; k++) {
        int i = (k + 1) % 3;
        int j = (k + 2) % 3;
        inverse[3 * a + k] = m[i][b] * m[j][c] - m[j][b] * m[i][c];
      }
    }
    for (int a = 0; a < 3; a++) {
      det += m[0][a] * inverse[3 * a];
    }
    for (int i = 0; i < 9; i++) {
      inverse[i] /= det;
    }
    return inverse;
  }

  /** The rows of a strain (or curvature) matrix in axes turned by an angle. */
  static double[] turned(double[] m, double c, double s) {
    int n = m.length / 3;
    double[] out = new double[m.length];
    for (int j = 0; j < n; j++) {
      double xx = m[j];
      double yy = m[n + j];
      double xy = m[2 * n + j];
      out[j] = c * c * xx + s * s * yy + c * s * xy;
      out[n + j] = s * s * xx + c * c * yy - c * s * xy;
      out[2 * n + j] = 2 * c * s * (yy - xx) + (c * c - s * s) * xy;
    }
    return out;
  }
}
