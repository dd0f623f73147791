package auricle.healing;

import auricle.energy.EnergyTerm;
import auricle.energy.ScaledTerm;
import java.util.List;
import java.util.Optional;

/** What holds the ear from outside for some days and is then taken off: a bolster, a bandage. */
public final class TakenOff implements TimePart {
  private final String name;
  private final double until_s;
  private final List<ScaledTerm> terms;
  private double end;
  private boolean off;

  /**
   * @param name what it is called in messages
   * @param holds its energies
   * @param days when it is taken off, days
   */
  public TakenOff(String name, List<? extends EnergyTerm> holds, double days) {
    this.name = name;
    until_s = days * Durations.DAY_S;
    terms = holds.stream().map(term -> new ScaledTerm(term)).toList();
  }

  @Override
  public List<ScaledTerm> terms() {
    return terms;
  }

  @Override
  public void aim(double from_s, double to_s) {
    end = to_s;
    terms.forEach(term -> term.scale(off ? 0 : 1, off ? 0 : 1));
  }

  @Override
  public void arrive(double[] u) {}

  @Override
  public Optional<String> yields(double[] u) {
    return !off && end >= until_s ? Optional.of(name + " is taken off") : Optional.empty();
  }

  @Override
  public void give(double[] u) {
    off = true;
    terms.forEach(term -> term.scale(1, 0));
  }

  @Override
  public double nextChange(double after_s) {
    return !off && after_s < until_s ? until_s : Double.POSITIVE_INFINITY;
  }
}
