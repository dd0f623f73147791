package auricle.scenario;

import auricle.anatomy.Side;
import auricle.plan.EarCase;
import java.util.List;
import java.util.Optional;

/**
 * An ear or a pair of ears, what is done to them, and what should come out.
 *
 * @param title what it shows, in a few words; empty if it has none
 * @param notes anything a reader should know; empty if there are none
 * @param ears one ear, or two of different sides, the right one first
 * @param times after the operation at which the ears are measured; empty: the usual ones
 */
public record Scenario(String title, String notes, List<ScenarioEar> ears, List<Moment> times) {

  /**
   * @param ears one or two
   * @param times in order
   */
  public Scenario {
    ears = List.copyOf(ears);
    times = List.copyOf(times);
  }

  /** A scenario of one ear without expectations. */
  public static Scenario of(String title, EarCase ear) {
    return new Scenario(title, "", List.of(new ScenarioEar(ear, Expected.NONE)), List.of());
  }

  /** The ear of a side, if it is in the scenario. */
  public Optional<ScenarioEar> ear(Side side) {
    return ears.stream().filter(e -> e.side() == side).findFirst();
  }

  /** The same with another case for the ear of its side. */
  public Scenario with(EarCase changed) {
    return new Scenario(
        title,
        notes,
        ears.stream().map(e -> e.side() == changed.ear().side() ? e.with(changed) : e).toList(),
        times);
  }

  /** The times, days after the operation; empty: the usual ones. */
  public List<Double> times_days() {
    return times.stream().map(Moment::days).toList();
  }
}
