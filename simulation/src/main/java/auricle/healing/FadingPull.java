package auricle.healing;

import auricle.energy.EnergyTerm;
import auricle.energy.ScaledTerm;
import java.util.List;

/**
 * A pull that fades whatever the ear does, as skin that was stretched to close a gap creeps: factor
 * 1 − f (1 − exp(−t/τ)) on its energy.
 */
public final class FadingPull implements TimePart {
  private final double fraction;
  private final double scale_s;
  private final List<ScaledTerm> terms;

  /**
   * @param pulls its energies
   * @param fraction f, share that fades in the end, 0 … 1
   * @param days τ, days, above 0
   */
  public FadingPull(List<? extends EnergyTerm> pulls, double fraction, double days) {
    if (!(fraction >= 0 && fraction <= 1 && days > 0)) {
      throw new IllegalArgumentException("fades by " + fraction + " over " + days + " days");
    }
    this.fraction = fraction;
    scale_s = days * Durations.DAY_S;
    terms = pulls.stream().map(term -> new ScaledTerm(term)).toList();
  }

  @Override
  public List<ScaledTerm> terms() {
    return terms;
  }

  @Override
  public void aim(double from_s, double to_s) {
    double factor = 1 + fraction * Math.expm1(-to_s / scale_s);
    terms.forEach(term -> term.scale(factor, factor));
  }

  @Override
  public void arrive(double[] u) {}
}
