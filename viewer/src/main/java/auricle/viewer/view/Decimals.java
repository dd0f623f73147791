package auricle.viewer.view;

import java.util.Locale;
import javafx.scene.control.SpinnerValueFactory.DoubleSpinnerValueFactory;
import javafx.util.StringConverter;

/**
 * Numbers of a field as text, with as many decimals as its step has. Of what is typed, the nearest
 * value within the field's bounds is taken; what is no number changes nothing.
 */
final class Decimals extends StringConverter<Double> {
  private static final int MOST = 3;
  private static final double SAME = 1e-9;

  private final double step;
  private final DoubleSpinnerValueFactory values;

  Decimals(double step, DoubleSpinnerValueFactory values) {
    this.step = step;
    this.values = values;
  }

  @Override
  public String toString(Double v) {
    return v == null ? "" : text(v, step);
  }

  @Override
  public Double fromString(String text) {
    try {
      double v = Double.parseDouble(text.strip().replace(',', '.'));
      return Math.max(values.getMin(), Math.min(values.getMax(), v));
    } catch (NumberFormatException e) {
      return values.getValue();
    }
  }

  /** A value with as many decimals as a step has; one more where it lies halfway between two. */
  static String text(double value, double step) {
    int decimals = 0;
    double s = step;
    while (decimals < MOST && !whole(s)) {
      s *= 10;
      decimals++;
    }
    if (decimals == 0 && !whole(value) && whole(10 * value)) {
      decimals = 1;
    }
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  private static boolean whole(double v) {
    return Math.abs(v - Math.round(v)) <= SAME;
  }
}
