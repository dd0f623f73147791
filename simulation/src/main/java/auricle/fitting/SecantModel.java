package auricle.fitting;

import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * Residuals with a Jacobian that is taken by differences once and then follows the values met on
 * the way, so that a step costs one evaluation (Broyden 1965, Math Comp 19:577-593):
 *
 * <pre>
 *   J ← J + (Δr − J Δq) Δqᵀ / (Δq · Δq)
 * </pre>
 */
final class SecantModel implements MultivariateJacobianFunction {
  private static final double STEP = 1e-3;
  private static final double NOWHERE = 1e-20;
  private final UnaryOperator<double[]> residuals;
  private RealVector point;
  private RealVector value;
  private RealMatrix jacobian;

  /**
   * @param residuals of the unknowns; called by several threads
   * @param start where the Jacobian is taken by differences
   */
  SecantModel(UnaryOperator<double[]> residuals, double[] start) {
    this.residuals = residuals;
    point = new ArrayRealVector(start);
    value = new ArrayRealVector(residuals.apply(start));
    jacobian = differences();
  }

  private RealMatrix differences() {
    RealMatrix columns = new Array2DRowRealMatrix(value.getDimension(), point.getDimension());
    double[][] moved =
        IntStream.range(0, point.getDimension())
            .parallel()
            .mapToObj(this::moved)
            .toArray(double[][]::new);
    for (int k = 0; k < moved.length; k++) {
      RealVector rate = new ArrayRealVector(moved[k]).subtract(value).mapDivide(STEP);
      columns.setColumnVector(k, rate);
    }
    return columns;
  }

  private double[] moved(int k) {
    double[] next = point.toArray();
    next[k] += STEP;
    return residuals.apply(next);
  }

  @Override
  public Pair<RealVector, RealMatrix> value(RealVector next) {
    RealVector way = next.subtract(point);
    double length = way.dotProduct(way);
    if (length > NOWHERE) {
      RealVector reached = new ArrayRealVector(residuals.apply(next.toArray()));
      RealVector missed = reached.subtract(value).subtract(jacobian.operate(way));
      jacobian = jacobian.add(missed.mapDivide(length).outerProduct(way));
      point = next.copy();
      value = reached;
    }
    return Pair.create(value, jacobian);
  }
}
