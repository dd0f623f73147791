package auricle.fitting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Weights of measurements in the fit. Weighing what is missed more, again and again, leads from
 * least squares towards the least greatest miss (Lawson 1961, as in Rice & Usow 1968, Math Comp
 * 22:118-127).
 *
 * @param values one a measurement, in the order of the residuals
 */
record Weights(List<Double> values) {
  /** Share of the tolerance up to which a measurement may be missed and weigh no more. */
  private static final double ROOM = 0.75;

  Weights {
    values = List.copyOf(values);
  }

  /** All alike. */
  static Weights equal(int count) {
    return new Weights(Collections.nCopies(count, 1.0));
  }

  double of(int measurement) {
    return values.get(measurement);
  }

  /** Those that miss by more than they have room for weigh more. */
  Weights after(List<FitResidual> residuals) {
    List<Double> next = new ArrayList<>();
    for (int j = 0; j < residuals.size(); j++) {
      next.add(of(j) * Math.max(1, Math.abs(residuals.get(j).share()) / ROOM));
    }
    return new Weights(next);
  }
}
