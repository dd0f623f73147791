package auricle.anatomy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * The plan form of the normal auricle as smooth periodic functions of the way around the bowl:
 * Akima splines (Akima 1970, J ACM 17:589-602; continuous slope, little overshoot) through the rows
 * of {@code plan-form.csv}.
 */
final class PlanForm {
  /** Where the way around closes: 0 … 1 is the open C, the rest the front. */
  static final double PERIOD = 1.25;

  private static final String RESOURCE = "plan-form.csv";
  private final Map<Form, PolynomialSplineFunction> functions = new EnumMap<>(Form.class);

  private PlanForm(List<String> lines) {
    List<String> heads = List.of(lines.get(0).split(","));
    double[][] rows =
        lines.stream()
            .skip(1)
            .map(l -> Arrays.stream(l.split(",")).mapToDouble(Double::parseDouble).toArray())
            .toArray(double[][]::new);
    for (Form form : Form.values()) {
      functions.put(form, periodic(rows, heads.indexOf(form.key()), form.growth()));
    }
  }

  /** The shipped form. */
  static PlanForm shipped() {
    return Shipped.FORM;
  }

  private static PlanForm read() {
    try (InputStream in = PlanForm.class.getResourceAsStream(RESOURCE);
        BufferedReader reader =
            new BufferedReader(
                new InputStreamReader(Objects.requireNonNull(in), StandardCharsets.UTF_8))) {
      return new PlanForm(reader.lines().filter(l -> !l.startsWith("#")).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(RESOURCE + " cannot be read", e);
    }
  }

  /** Three turns of the rows, so that the middle one is periodic. */
  private static PolynomialSplineFunction periodic(double[][] rows, int column, double growth) {
    int n = rows.length;
    double[] x = new double[3 * n];
    double[] y = new double[3 * n];
    for (int i = 0; i < 3 * n; i++) {
      x[i] = rows[i % n][0] + (i / n - 1) * PERIOD;
      y[i] = rows[i % n][column] + (i / n - 1) * growth;
    }
    return new AkimaSplineInterpolator().interpolate(x, y);
  }

  /** All columns at a place around, -0.5 … 1.75. */
  PlanStation at(double around) {
    return new PlanStation(this, around);
  }

  /** A column at a place around, -0.5 … 1.75. */
  double value(Form form, double around) {
    return Objects.requireNonNull(functions.get(form)).value(around);
  }

  private static final class Shipped {
    private static final PlanForm FORM = read();
  }
}
