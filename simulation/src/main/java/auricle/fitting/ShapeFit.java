package auricle.fitting;

import auricle.anatomy.ShapeKnob;
import auricle.anatomy.ShapeParameters;
import auricle.measurement.Measures;
import auricle.measurement.RestMeasurer;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;

/**
 * Shape parameters by least squares (Levenberg 1944, Marquardt 1963) on the smooth surface.
 *
 * <pre>
 *   minimise  Σ_j (w_j (m_j(p) − m̂_j)/t_j)² + ε² Σ_k ((p_k − p_k0)/r_k)²,   p_k = c_k + r_k tanh q_k
 * </pre>
 *
 * <p>m̂: wanted values, t: their tolerances (0.5 mm, 2 deg), w: weights, 1 at first; c, r: middle
 * and half of a knob's range; p0: the first guess, to which what no measurement decides returns, ε
 * = 0.3 at first, less later. The unknowns q are free, so that p never leaves its bounds, those of
 * usual ears or the wide ones. The Jacobian is by differences.
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
          ShapeKnob.FRONT_BASE,
          ShapeKnob.WALL_REACH,
          ShapeKnob.CREST_UPPER);
  private static final double NEAR_BOUND = 0.98;
  private static final double FIRST_STEP = 1;
  private static final int ITERATIONS = 30;
  private static final double GOOD_ENOUGH = 1e-5;
  private final Wanted wanted;
  private final Weights weights;
  private final RestMeasurer measurer;

  private final ShapeParameters guess;
  private final double pull;
  private final boolean wide;

  ShapeFit(
      Wanted wanted,
      Weights weights,
      RestMeasurer measurer,
      ShapeParameters guess,
      double pull,
      boolean wide) {
    this.wide = wide;
    this.guess = guess;
    this.wanted = wanted;
    this.weights = weights;
    this.measurer = measurer;
    this.pull = pull;
  }

  /** The best shape from a start. */
  ShapeParameters from(ShapeParameters start) {
    double[] q = KNOBS.stream().mapToDouble(knob -> free(knob, start.value(knob))).toArray();
    LeastSquaresBuilder problem =
        new LeastSquaresBuilder()
            .model(new SecantModel(this::residuals, q))
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

  private double[] residuals(double[] q) {
    ShapeParameters shape = shape(q);
    Measures measures = measurer.measure(shape);
    List<FitResidual> met = wanted.residuals(measures);
    double[] r = new double[met.size() + KNOBS.size()];
    for (int j = 0; j < met.size(); j++) {
      r[j] = weights.of(j) * met.get(j).share();
    }
    for (int k = 0; k < KNOBS.size(); k++) {
      ShapeKnob knob = KNOBS.get(k);
      r[met.size() + k] = pull * (shape.value(knob) - guess.value(knob)) / half(knob);
    }
    return r;
  }

  private double low(ShapeKnob knob) {
    return wide ? knob.least() : knob.low();
  }

  private double high(ShapeKnob knob) {
    return wide ? knob.most() : knob.high();
  }

  private double middle(ShapeKnob knob) {
    return (low(knob) + high(knob)) / 2;
  }

  private double half(ShapeKnob knob) {
    return (high(knob) - low(knob)) / 2;
  }

  private double free(ShapeKnob knob, double value) {
    double share = (value - middle(knob)) / half(knob);
    double s = Math.max(-NEAR_BOUND, Math.min(NEAR_BOUND, share));
    return Math.log((1 + s) / (1 - s)) / 2;
  }

  private ShapeParameters shape(double[] q) {
    Map<ShapeKnob, Double> values = new EnumMap<>(ShapeKnob.class);
    for (int k = 0; k < q.length; k++) {
      ShapeKnob knob = KNOBS.get(k);
      double value = middle(knob) + half(knob) * Math.tanh(q[k]);
      values.put(knob, Math.max(low(knob), Math.min(high(knob), value)));
    }
    return new ShapeParameters(values);
  }
}
