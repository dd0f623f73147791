package auricle.testing;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.Locale;

/**
 * The assertion for numbers. It refuses a tolerance that a wrong result could pass: the tolerance
 * has to be far below the magnitude that it guards.
 */
public final class Check {
  /** Largest tolerance allowed, as a share of the magnitude that it guards. */
  public static final double LOOSEST = 0.05;

  private Check() {}

  /**
   * Fails if a value is further from the expected one than the tolerance, or if the tolerance is
   * above a twentieth of the expected magnitude.
   *
   * @param tolerance absolute, in the unit of the values
   * @param source where the expected value comes from, and how sure it is
   */
  public static void close(double actual, double expected, double tolerance, String source) {
    close(actual, expected, tolerance, Math.abs(expected), source);
  }

  /**
   * The same for an expected value that is zero or small beside its neighbours: the scale is the
   * magnitude that such a value has elsewhere in the same problem.
   *
   * @param scale magnitude that the tolerance guards, in the unit of the values; positive
   */
  public static void close(
      double actual, double expected, double tolerance, double scale, String source) {
    if (!(tolerance >= 0 && tolerance <= LOOSEST * scale)) {
      fail(words("the tolerance %.3g is too loose to guard %.6g (%s)", tolerance, scale, source));
    }
    double difference = actual - expected;
    if (!(Math.abs(difference) <= tolerance)) {
      fail(
          words(
              "%.10g differs from %.10g by %.3g (%.3g of the scale), more than %.3g; expected by: %s",
              actual, expected, difference, difference / scale, tolerance, source));
    }
  }

  /**
   * Fails if a value differs from the expected one by more than a share of it.
   *
   * @param share relative tolerance, at most a twentieth
   */
  public static void within(double share, double actual, double expected, String source) {
    close(actual, expected, share * Math.abs(expected), source);
  }

  private static String words(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
