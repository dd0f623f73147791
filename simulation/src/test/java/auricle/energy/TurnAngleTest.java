package auricle.energy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import auricle.geometry.Vectors;
import org.junit.jupiter.api.Test;

class TurnAngleTest {
  private static final double[] X = {1, 0, 0};
  private static final double[] Y = {0, 1, 0};
  private static final double[] Z = {0, 0, 1};

  @Test
  void directorThatStaysInThePlaneTurnsByItsAngle() {
    assertEquals(0.3, new TurnAngle(Z, X, Y, Z, Math.tan(0.3), 0).angle(), 1e-15);
    assertEquals(-0.3, new TurnAngle(Z, X, Y, Z, -Math.tan(0.3), 0.7).angle(), 1e-15);
    assertEquals(0.3, new TurnAngle(Y, X, Y, Z, 0.2, -Math.tan(0.3)).angle(), 1e-15);
  }

  @Test
  void slopesAndBendsAgreeWithDifferences() {
    double[] axis = Vectors.unit(new double[] {0.3, -0.9, 0.5});
    double[] d = Vectors.unit(new double[] {1, 0.4, 0.2});
    double[] m1 = Vectors.unit(Vectors.cross(d, Z));
    double[] m2 = Vectors.cross(d, m1);
    double h = 1e-5;
    for (int k = 0; k < 2; k++) {
      double d1 = k == 0 ? h : 0;
      double d2 = h - d1;
      TurnAngle up = new TurnAngle(axis, d, m1, m2, 0.2 + d1, -0.4 + d2);
      TurnAngle down = new TurnAngle(axis, d, m1, m2, 0.2 - d1, -0.4 - d2);
      TurnAngle here = new TurnAngle(axis, d, m1, m2, 0.2, -0.4);
      assertEquals((up.angle() - down.angle()) / (2 * h), here.slope(k), 1e-9);
      for (int l = 0; l < 2; l++) {
        assertEquals((up.slope(l) - down.slope(l)) / (2 * h), here.bend(l, k), 1e-9);
        assertEquals(here.bend(l, k), here.bend(k, l), 1e-14);
      }
    }
  }
}
