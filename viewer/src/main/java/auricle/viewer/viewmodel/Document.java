package auricle.viewer.viewmodel;

import auricle.anatomy.Side;
import auricle.plan.EarCase;
import auricle.plan.Plan;
import auricle.scenario.Scenario;
import java.util.function.UnaryOperator;

/**
 * What is worked on: a scenario with one ear or a pair, and which of them is shown.
 *
 * @param scenario as it is in the file
 * @param shown index of the ear that is shown
 */
public record Document(Scenario scenario, int shown) {
  /** A scenario, its first ear shown. */
  public static Document of(Scenario scenario) {
    return new Document(scenario, 0);
  }

  /** The ear that is shown. */
  public EarCase ear() {
    return scenario.ears().get(shown).ear();
  }

  /** Title, or words for one that has none. */
  public String title() {
    return scenario.title().isBlank() ? "Untitled scenario" : scenario.title();
  }

  /** Whether the ear that is shown is a left one. */
  public boolean left() {
    return ear().ear().side() == Side.LEFT;
  }

  /** With another plan for the ear that is shown. */
  public Document withPlan(UnaryOperator<Plan> edit) {
    return withEar(e -> e.withPlan(edit.apply(e.plan())));
  }

  /** With the ear that is shown changed; its side stays. */
  public Document withEar(UnaryOperator<EarCase> edit) {
    return new Document(scenario.with(edit.apply(ear())), shown);
  }

  /** With another of the ears shown. */
  public Document showing(int index) {
    return new Document(scenario, index);
  }
}
