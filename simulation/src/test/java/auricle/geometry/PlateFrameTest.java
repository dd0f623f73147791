package auricle.geometry;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PlateFrameTest {
  private final double[] z = {0.1, 0.2, -0.3, 2.1, -0.4, 0.5, 0.7, 1.9, 0.2};

  private static PlateFrame frame(double[] z) {
    return new PlateFrame(Vectors.at(z, 0), Vectors.at(z, 3), Vectors.at(z, 6));
  }

  @Test
  void normalOfAnAnticlockwiseTrianglePointsAtTheViewer() {
    PlateFrame frame = frame(new double[] {0, 0, 0, 2, 0, 0, 0, 3, 0});
    assertArrayEquals(new double[] {0, 0, 1}, frame.normal());
    assertEquals(3, frame.area());
    assertArrayEquals(new double[] {0.5, 1 / 3.0, 0}, frame.tip(0), 1e-15);
  }

  @Test
  void firstAndSecondDerivativesOfTheNormalAgreeWithDifferences() {
    double[] w = {0.3, -1.2, 0.8};
    double[] hessian = new double[81];
    frame(z).addNormalCurvature(w, hessian);
    double h = 1e-5;
    for (int c = 0; c < 9; c++) {
      double[] up = z.clone();
      double[] down = z.clone();
      up[c] += h;
      down[c] -= h;
      double slope =
          Vectors.dot(w, Vectors.subtract(frame(up).normal(), frame(down).normal())) / (2 * h);
      assertEquals(slope(z, w, c), slope, 1e-9);
      for (int r = 0; r < 9; r++) {
        double bend = (slope(up, w, r) - slope(down, w, r)) / (2 * h);
        assertEquals(bend, hessian[r * 9 + c], 1e-9);
        assertEquals(hessian[c * 9 + r], hessian[r * 9 + c], 1e-15);
      }
    }
  }

  private static double slope(double[] z, double[] w, int place) {
    PlateFrame frame = frame(z);
    return Vectors.dot(w, frame.tip(place / 3)) * frame.normal()[place % 3];
  }

  @Test
  void triangleOfNoAreaGivesNoNumbers() {
    assertTrue(Double.isNaN(frame(new double[9]).normal()[0]));
  }
}
