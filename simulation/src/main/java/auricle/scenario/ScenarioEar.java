package auricle.scenario;

import auricle.anatomy.Side;
import auricle.plan.EarCase;

/**
 * One ear of a scenario.
 *
 * @param ear what is to be rehearsed
 * @param expected what should come out
 */
public record ScenarioEar(EarCase ear, Expected expected) {

  /** Which ear. */
  public Side side() {
    return ear.ear().side();
  }

  /** The same expectations of another case. */
  public ScenarioEar with(EarCase other) {
    return new ScenarioEar(other, expected);
  }
}
