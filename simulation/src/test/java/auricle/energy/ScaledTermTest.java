package auricle.energy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class ScaledTermTest {
  private static final double[] U = {0, 0, 0, 3, 1, 0.5, 2, 2, 2};
  private final ElasticThread thread =
      new ElasticThread(
          "thread", List.of(new VertexPoint(0), new VertexPoint(1), new VertexPoint(2)), true, 10);
  private final ScaledTerm scaled = new ScaledTerm(thread);

  @Test
  void valueAndDerivativesAreThoseOfTheTermTimesTheFactor() {
    thread.tieToLength(5);
    scaled.scale(1, 0.25);
    scaled.setLoadFactor(0.5);
    double[] gradient = new double[9];
    double[] hessian = new double[81];
    double[] plainGradient = new double[9];
    double[] plainHessian = new double[81];
    double value = scaled.derivatives(0, U, gradient, hessian);
    double plain = thread.derivatives(0, U, plainGradient, plainHessian);
    assertEquals(0.625 * plain, value);
    assertEquals(value, scaled.value(0, U));
    for (int i = 0; i < 9; i++) {
      assertEquals(0.625 * plainGradient[i], gradient[i]);
      assertEquals(0.625 * plainHessian[10 * i], hessian[10 * i]);
    }
  }

  @Test
  void aFactorBelowNoneIsNone() {
    thread.tieToLength(5);
    scaled.scale(1, 0);
    scaled.setLoadFactor(1.01);
    assertEquals(0, scaled.value(0, U));
    assertThrows(IllegalArgumentException.class, () -> scaled.scale(-1, 1));
  }

  @Test
  void aThreadLetGoOfGetsLongerAndPullsAtNothingInTheEnd() {
    thread.tieToLength(5);
    double tied = thread.tension(U);
    double rate = 2;
    thread.letGo();
    thread.setLoadFactor(0);
    assertEquals(tied, thread.tension(U), 1e-12);
    thread.setLoadFactor(0.1);
    assertEquals(tied - rate * 0.5, thread.tension(U), 1e-12);
    thread.setLoadFactor(1);
    assertEquals(0, thread.tension(U));
  }
}
