package auricle.viewer.viewmodel;

import auricle.anatomy.Side;
import auricle.plan.EarCase;
import auricle.plan.Plan;
import auricle.scenario.Expected;
import auricle.scenario.Scenario;
import auricle.scenario.ScenarioEar;
import java.util.List;
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

  /** Whether there are two ears. */
  public boolean pair() {
    return scenario.ears().size() > 1;
  }

  /** With the one ear on a side; a pair stays as it is, since it has both. */
  public Document onSide(Side side) {
    if (pair()) {
      return this;
    }
    ScenarioEar only = scenario.ears().get(0);
    return withEars(List.of(only.with(onSide(only.ear(), side))), side);
  }

  /** With the other ear added to one: the same on the other side, plan and all, and shown. */
  public Document withOther() {
    if (pair()) {
      return this;
    }
    ScenarioEar only = scenario.ears().get(0);
    Side other = only.side() == Side.RIGHT ? Side.LEFT : Side.RIGHT;
    ScenarioEar added = new ScenarioEar(onSide(only.ear(), other), Expected.NONE);
    return withEars(other == Side.RIGHT ? List.of(added, only) : List.of(only, added), other);
  }

  /** Without the ear that is shown, if there is another. */
  public Document withoutShown() {
    Side gone = ear().ear().side();
    List<ScenarioEar> left = scenario.ears().stream().filter(e -> e.side() != gone).toList();
    return left.isEmpty() ? this : withEars(left, left.get(0).side());
  }

  private static EarCase onSide(EarCase ear, Side side) {
    return ear.withEar(ear.ear().withSide(side));
  }

  private Document withEars(List<ScenarioEar> ears, Side side) {
    Scenario changed = new Scenario(scenario.title(), scenario.notes(), ears, scenario.times());
    return new Document(changed, ears.get(0).side() == side ? 0 : 1);
  }

  /** With the ear of a side shown, if there is one. */
  public Document showing(Side side) {
    for (int i = 0; i < scenario.ears().size(); i++) {
      if (scenario.ears().get(i).side() == side) {
        return showing(i);
      }
    }
    return this;
  }

  /** With another of the ears shown. */
  public Document showing(int index) {
    return new Document(scenario, index);
  }
}
