package auricle.energy;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.geometry.Vectors;
import auricle.mesh.Topology;
import auricle.testing.Check;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A bite on a triangle whose corner is pushed onto the opposite edge, and beyond. */
class SquashedBiteTest {
  private static final double OFFSET = -0.7;
  private static final double[] PULL = {0.3, -0.8, 0.5};

  private final Topology mesh = new Topology(3, new int[] {0, 1, 2});
  private final double[] rest = squashed(1);
  private final double[] above = {0.6, 0.4, OFFSET};
  private final SurfacePoint bite = SurfacePoint.carried(mesh, 0, rest, above);

  /** The triangle with its third corner at a share of its height, shaken a little. */
  private double[] squashed(double height) {
    double[] u = new double[mesh.unknowns().size()];
    double[] corners = {0, 0, 0, 1.6, 0, 0, 0.7, 1.4 * height, 0};
    System.arraycopy(corners, 0, u, 0, corners.length);
    return u;
  }

  private PointForce force() {
    return new PointForce("pull", bite, rest, PULL);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.9, 0.41, 0.39, 0.2, 0.05, 0, -0.1, -0.39, -0.6})
  void derivativesAreExactHoweverFarItIsSquashed(double height) {
    double[] u = squashed(height);
    u[2] = 0.05;
    u[7] += 0.01;
    EnergyTermContract.assertExact(force(), u);
  }

  /** The derivatives on both sides of the bound, by coordinates of all corners. */
  @ParameterizedTest
  @ValueSource(doubles = {0.4, -0.4, 0})
  void forceAndStiffnessAreContinuousWhereItBeginsAndWhereItTurnsOver(double height) {
    double step = 1e-7;
    double[][] below = derivatives(squashed(height - step));
    double[][] beyond = derivatives(squashed(height + step));
    assertArrayEquals(below[0], beyond[0], 1e-5);
    assertArrayEquals(below[1], beyond[1], 1e-4);
  }

  private double[][] derivatives(double[] u) {
    double[] gradient = new double[9];
    double[] hessian = new double[81];
    force().derivatives(0, u, gradient, hessian);
    return new double[][] {gradient, hessian};
  }

  @Test
  void itPassesFromOneSideToTheOtherWithoutAJump() {
    double side = bite.position(squashed(0.4))[2];
    Check.within(1e-12, side, OFFSET, "the offset, at right angles to the plane");
    Check.within(1e-12, bite.position(squashed(-0.4))[2], -OFFSET, "turned over");
    double jump = 0;
    for (int k = -40; k < 40; k++) {
      double[] here = bite.position(squashed(k / 100.0));
      double[] next = bite.position(squashed((k + 1) / 100.0));
      jump = Math.max(jump, Vectors.norm(Vectors.subtract(next, here)));
    }
    assertTrue(jump < 0.06, "largest move at a hundredth of the height: " + jump);
  }

  @Test
  void onATriangleThatIsNotSquashedItIsHeldByTheUnitNormal() {
    double[] u = squashed(0.6);
    u[5] = 0.4;
    SurfacePoint plain =
        new SurfacePoint(mesh, 0, (0.6 - 0.7 * 0.4 / 1.4) / 1.6, 0.4 / 1.4, OFFSET);
    assertArrayEquals(plain.position(u), bite.position(u), 1e-15);
    assertArrayEquals(plain.jacobian(u), bite.jacobian(u), 1e-15);
  }
}
