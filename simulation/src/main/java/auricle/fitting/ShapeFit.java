package auricle.fitting;

import auricle.anatomy.ShapeKnob;
import auricle.anatomy.ShapeParameters;
import auricle.measurement.Measures;
import auricle.measurement.RestMeasurer;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * Shape parameters by least squares (Levenberg 1944, Marquardt 1963) on the smooth surface.
 *
 * <pre>
 *   minimise  Σ_j ((m_j(p) − m̂_j)/t_j)² + ε² Σ_k ((p_k − p_k0)/r_k)²,   p_k = c_k + r_k tanh q_k
 * </pre>
 *
 * <p>m̂: wanted values, t: their tolerances (0.5 mm, 2 deg); c, r: middle and half of a knob's
 * range; p0: the normal shape, to which what no measurement decides returns, ε = 0.05. The unknowns
 * q are free, so that p never leaves its bounds. The Jacobian is by differences.
 */
final class ShapeFit {
  private static final List<ShapeKnob> KNOBS =
      List.of(
          ShapeKnob.HEIGHT,
          ShapeKnob.WIDTH,
          ShapeKnob.BOWL_DEPTH,
          ShapeKnob.FOLD_UPPER,
          ShapeKnob.FOLD_MIDDLE,
          ShapeKnob.FOLD_LOWER,
          ShapeKnob.LEAN_UPPER,
          ShapeKnob.LEAN_MIDDLE,
          ShapeKnob.LEAN_LOWER,
          ShapeKnob.LOBULE_SLOPE,
          ShapeKnob.SCAPHA_BREADTH,
          ShapeKnob.HELIX_BREADTH,
          ShapeKnob.FRONT_BASE);
  private static final double STEP = 1e-4;
  private static final double NEAR_BOUND = 0.98;
  private static final double FIRST_STEP = 1;
  private static final int ITERATIONS = 25;
  private static final double GOOD_ENOUGH = 1e-3;
  private final Wanted wanted;
  private final RestMeasurer measurer;

  private final double pull;

  ShapeFit(Wanted wanted, RestMeasurer measurer, double pull) {
    this.wanted = wanted;
    this.measurer = measurer;
    this.pull = pull;
  }

  /** The best shape from a start. */
  ShapeParameters from(ShapeParameters start) {
    double[] q = KNOBS.stream().mapToDouble(knob -> free(knob, start.value(knob))).toArray();
    MultivariateJacobianFunction model = this::model;
    LeastSquaresBuilder problem =
        new LeastSquaresBuilder()
            .model(model)
            .target(new double[residuals(q).length])
            .start(q)
            .maxEvaluations(1000)
            .maxIterations(1000)
            .checker(
                (i, before, after) ->
                    i >= ITERATIONS || before.getCost() - after.getCost() < GOOD_ENOUGH);
    return shape(
        new LevenbergMarquardtOptimizer()
            .withInitialStepBoundFactor(FIRST_STEP)
            .optimize(problem.build())
            .getPoint()
            .toArray());
  }

  private Pair<RealVector, org.apache.commons.math3.linear.RealMatrix> model(RealVector point) {
    double[] q = point.toArray();
    double[] r = residuals(q);
    double[][] moved =
        IntStream.range(0, q.length).parallel().mapToObj(k -> moved(q, k)).toArray(double[][]::new);
    double[][] jacobian = new double[r.length][q.length];
    for (int j = 0; j < r.length; j++) {
      for (int k = 0; k < q.length; k++) {
        jacobian[j][k] = (moved[k][j] - r[j]) / STEP;
      }
    }
    return Pair.create(new ArrayRealVector(r), new Array2DRowRealMatrix(jacobian));
  }

  private double[] moved(double[] q, int k) {
    double[] next = q.clone();
    next[k] += STEP;
    return residuals(next);
  }

  private double[] residuals(double[] q) {
    ShapeParameters shape = shape(q);
    Measures measures = measurer.measure(shape);
    List<FitResidual> met = wanted.residuals(measures);
    double[] r = new double[met.size() + KNOBS.size()];
    for (int j = 0; j < met.size(); j++) {
      r[j] = met.get(j).share();
    }
    for (int k = 0; k < KNOBS.size(); k++) {
      ShapeKnob knob = KNOBS.get(k);
      r[met.size() + k] = pull * (shape.value(knob) - knob.normal()) / half(knob);
    }
    return r;
  }

  private static double half(ShapeKnob knob) {
    return (knob.high() - knob.low()) / 2;
  }

  private static double free(ShapeKnob knob, double value) {
    double share = (value - (knob.low() + knob.high()) / 2) / half(knob);
    double s = Math.max(-NEAR_BOUND, Math.min(NEAR_BOUND, share));
    return Math.log((1 + s) / (1 - s)) / 2;
  }

  private static ShapeParameters shape(double[] q) {
    Map<ShapeKnob, Double> values = new EnumMap<>(ShapeKnob.class);
    for (int k = 0; k < q.length; k++) {
      ShapeKnob knob = KNOBS.get(k);
      double value = (knob.low() + knob.high()) / 2 + half(knob) * Math.tanh(q[k]);
      values.put(knob, Math.max(knob.low(), Math.min(knob.high(), value)));
    }
    return new ShapeParameters(values);
  }
}
