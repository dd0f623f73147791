package auricle.material;

import org.apache.commons.math3.distribution.LogNormalDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.RealDistribution;
import org.apache.commons.math3.distribution.TriangularDistribution;
import org.apache.commons.math3.distribution.UniformRealDistribution;

/**
 * Spread of a number, in the number's own unit.
 *
 * @param distribution its kind
 * @param deviation standard deviation before the ends are cut off; NaN where there is none
 * @param low least number; NaN where none is stated
 * @param high greatest number; NaN where none is stated
 */
public record Spread(Distribution distribution, double deviation, double low, double high) {
  /** No spread. */
  public static final Spread NONE =
      new Spread(Distribution.NONE, Double.NaN, Double.NaN, Double.NaN);

  /** Whether the number spreads at all. */
  public boolean varies() {
    return distribution != Distribution.NONE;
  }

  /**
   * The number below which a share of all numbers lies. Ends are cut off: between them the shape of
   * the distribution stays.
   *
   * @param value the table's number: mean of a normal or log-normal, peak of a triangular spread
   * @param share in (0, 1)
   * @param lowest least number that can be, where the row does not say
   * @param highest greatest number that can be, where the row does not say
   */
  public double quantile(double value, double share, double lowest, double highest) {
    if (!varies()) {
      return value;
    }
    RealDistribution whole = whole(value);
    double from = whole.cumulativeProbability(Double.isNaN(low) ? lowest : low);
    double to = whole.cumulativeProbability(Double.isNaN(high) ? highest : high);
    return whole.inverseCumulativeProbability(from + share * (to - from));
  }

  private RealDistribution whole(double value) {
    return switch (distribution) {
      case NORMAL -> new NormalDistribution(null, value, deviation);
      case LOGNORMAL -> logNormal(value);
      case TRIANGULAR -> new TriangularDistribution(null, low, value, high);
      default -> new UniformRealDistribution(null, low, high);
    };
  }

  /** With mean m and deviation s: σ² = ln(1 + s²/m²), μ = ln m − σ²/2. */
  private RealDistribution logNormal(double mean) {
    double variance = Math.log1p(deviation * deviation / (mean * mean));
    return new LogNormalDistribution(null, Math.log(mean) - variance / 2, Math.sqrt(variance));
  }
}
