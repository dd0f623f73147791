package auricle.viewer.viewmodel;

import auricle.anatomy.Side;
import auricle.plan.EarCase;
import auricle.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * What is worked on: one ear or a pair, and which of them is shown.
 *
 * @param title of the scenario
 * @param ears one or two
 * @param shown index of the ear that is shown
 */
public record Document(String title, List<EarCase> ears, int shown) {
  /** Keeps its own copy. */
  public Document {
    ears = List.copyOf(ears);
  }

  /** The ear that is shown. */
  public EarCase ear() {
    return ears.get(shown);
  }

  /** Whether it is a left ear. */
  public boolean left() {
    return ear().ear().side() == Side.LEFT;
  }

  /** With another plan for the ear that is shown. */
  public Document withPlan(UnaryOperator<Plan> edit) {
    return withEar(e -> e.withPlan(edit.apply(e.plan())));
  }

  /** With the ear that is shown changed. */
  public Document withEar(UnaryOperator<EarCase> edit) {
    List<EarCase> changed = new ArrayList<>(ears);
    changed.set(shown, edit.apply(ear()));
    return new Document(title, changed, shown);
  }

  /** With another of the ears shown. */
  public Document showing(int index) {
    return new Document(title, ears, index);
  }
}
