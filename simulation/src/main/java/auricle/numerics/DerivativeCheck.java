package auricle.numerics;

import java.util.Arrays;

/**
 * Compares exact first and second derivatives with central differences over a scan of step sizes.
 *
 * <p>Too long a step shows the curvature left out, too short a one rounding; the step at which the
 * worst entry agrees best is the one that counts (Dennis and Schnabel 1996, Numerical Methods for
 * Unconstrained Optimization, section 5.6). A right derivative reaches about 1e-8 of the largest
 * entry, a wrong one stays at its error.
 */
public final class DerivativeCheck {
  private static final double LONGEST = 1e-2;
  private static final double SHORTEST = 1e-8;
  private static final double RATIO = 4;

  /** A function with dense derivatives. */
  public interface Dense {
    /**
     * Value at x with gradient (length n) and Hessian (n × n, row by row), both filled.
     *
     * @return the value
     */
    double derivatives(double[] x, double[] gradient, double[] hessian);
  }

  /**
   * The entry that disagrees most at the best step size.
   *
   * @param what "gradient" or "Hessian"
   * @param row its unknown
   * @param column the other unknown; -1 for the gradient
   * @param exact what the function says
   * @param difference what differences say
   * @param relativeError their distance over the largest entry by size, or over the floor if that
   *     is larger
   * @param step step size
   */
  public record Worst(
      String what,
      int row,
      int column,
      double exact,
      double difference,
      double relativeError,
      double step) {
    @Override
    public String toString() {
      String place = column < 0 ? "%d".formatted(row) : "%d, %d".formatted(row, column);
      return "%s (%s): exact %.12g, by differences %.12g, error %.2e of the largest entry, step %.1e"
          .formatted(what, place, exact, difference, relativeError, step);
    }
  }

  private final Dense function;
  private final double[] x;
  private final double[] gradient;
  private final double[] hessian;

  /**
   * @param function what to check
   * @param x where
   */
  public DerivativeCheck(Dense function, double[] x) {
    this.function = function;
    this.x = x.clone();
    gradient = new double[x.length];
    hessian = new double[x.length * x.length];
    function.derivatives(this.x, gradient, hessian);
  }

  /** The check of a sparse function, whose state stays as it is. */
  public static DerivativeCheck of(SmoothFunction function, double[] x) {
    return new DerivativeCheck((at, g, h) -> unpacked(function, at, g, h), x);
  }

  private static double unpacked(SmoothFunction f, double[] x, double[] g, double[] h) {
    SymmetricMatrix matrix = new SymmetricMatrix(f.pattern());
    double value = f.derivatives(x, g, matrix);
    int[] start = f.pattern().columnStart();
    int[] row = f.pattern().rowIndex();
    Arrays.fill(h, 0);
    for (int j = 0; j < x.length; j++) {
      for (int p = start[j]; p < start[j + 1]; p++) {
        h[row[p] * x.length + j] = matrix.values()[p];
        h[j * x.length + row[p]] = matrix.values()[p];
      }
    }
    return value;
  }

  /**
   * The worst entry of the gradient, differences being those of the value.
   *
   * @param floor entries are compared with this where all are smaller: what counts as zero
   */
  public Worst gradient(double floor) {
    return best("gradient", 1, gradient, floor);
  }

  /**
   * The worst entry of the Hessian, differences being those of the gradient.
   *
   * @param floor entries are compared with this where all are smaller: what counts as zero
   */
  public Worst hessian(double floor) {
    return best("Hessian", x.length, hessian, floor);
  }

  /** The pair of mirrored entries of the Hessian that differ most; exact holds (r, c). */
  public Worst symmetry(double floor) {
    double scale = scale(hessian, floor);
    Worst worst = new Worst("Hessian's mirror", 0, 0, 0, 0, 0, 0);
    for (int r = 0; r < x.length; r++) {
      for (int c = 0; c < r; c++) {
        worst =
            worse(
                worst,
                new Worst(
                    "Hessian's mirror",
                    r,
                    c,
                    hessian[r * x.length + c],
                    hessian[c * x.length + r],
                    Math.abs(hessian[r * x.length + c] - hessian[c * x.length + r]) / scale,
                    0));
      }
    }
    return worst;
  }

  private Worst best(String what, int rows, double[] exact, double floor) {
    double scale = scale(exact, floor);
    Worst best = new Worst(what, -1, -1, 0, 0, Double.POSITIVE_INFINITY, LONGEST);
    for (double h = LONGEST; h >= SHORTEST; h /= RATIO) {
      Worst worst = new Worst(what, 0, rows == 1 ? -1 : 0, exact[0], exact[0], 0, h);
      for (int c = 0; c < x.length; c++) {
        double[] slope = rows == 1 ? valueSlope(c, h) : gradientSlope(c, h);
        for (int r = 0; r < rows; r++) {
          double value = exact[r * x.length + c];
          double error = Math.abs(value - slope[r]) / scale;
          worst =
              worse(
                  worst,
                  new Worst(
                      what, rows == 1 ? c : r, rows == 1 ? -1 : c, value, slope[r], error, h));
        }
      }
      best = worst.relativeError() < best.relativeError() ? worst : best;
    }
    return best;
  }

  private static Worst worse(Worst a, Worst b) {
    return b.relativeError() <= a.relativeError() ? a : b;
  }

  private double[] valueSlope(int unknown, double h) {
    double[] g = new double[x.length];
    double[] k = new double[hessian.length];
    double up = function.derivatives(moved(unknown, h), g, k);
    double down = function.derivatives(moved(unknown, -h), g, k);
    return new double[] {(up - down) / (2 * h)};
  }

  private double[] gradientSlope(int unknown, double h) {
    double[] up = new double[x.length];
    double[] down = new double[x.length];
    double[] k = new double[hessian.length];
    function.derivatives(moved(unknown, h), up, k);
    function.derivatives(moved(unknown, -h), down, k);
    for (int r = 0; r < up.length; r++) {
      up[r] = (up[r] - down[r]) / (2 * h);
    }
    return up;
  }

  private double[] moved(int unknown, double h) {
    double[] moved = x.clone();
    moved[unknown] += h;
    return moved;
  }

  /** The largest entry by size, the floor if that is larger, 1 if both are zero. */
  private static double scale(double[] values, double floor) {
    double largest = floor;
    for (double v : values) {
      largest = Math.max(largest, Math.abs(v));
    }
    return largest == 0 ? 1 : largest;
  }
}
