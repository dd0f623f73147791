package auricle.viewer.viewmodel;

import auricle.diagnostics.Finding;
import auricle.plan.Dose;
import auricle.plan.Operation;
import auricle.plan.Plan;
import auricle.plan.TiedOperation;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleIntegerProperty;

/** The steps of the plan in order, and which of them is being worked on. */
public final class PlanSteps {
  private final Desk desk;
  private final ReadOnlyObjectWrapper<Plan> plan;
  private final IntegerProperty chosen = new SimpleIntegerProperty(-1);

  /** The steps of the document on the desk. */
  public PlanSteps(Desk desk) {
    this.desk = desk;
    this.plan = new ReadOnlyObjectWrapper<>(desk.document().get().ear().plan());
    desk.document().addListener((o, was, now) -> follow(now.ear().plan()));
    chosen.set(firstSuture(plan.get()));
  }

  /** Index of the first suture: its bites can be dragged; else of the first step, −1 for none. */
  private static int firstSuture(Plan plan) {
    for (int i = 0; i < plan.operations().size(); i++) {
      if (plan.operations().get(i) instanceof TiedOperation) {
        return i;
      }
    }
    return plan.operations().isEmpty() ? -1 : 0;
  }

  private void follow(Plan now) {
    plan.set(now);
    int last = now.operations().size() - 1;
    if (chosen.get() > last) {
      chosen.set(last);
    } else if (chosen.get() < 0 && last >= 0) {
      chosen.set(0);
    }
  }

  /** The plan as it stands. */
  public ReadOnlyObjectProperty<Plan> plan() {
    return plan.getReadOnlyProperty();
  }

  /** Index of the step worked on; −1 if there is none. */
  public IntegerProperty chosen() {
    return chosen;
  }

  /** The step worked on. */
  public Optional<Operation> operation() {
    List<Operation> all = plan.get().operations();
    int i = chosen.get();
    return i >= 0 && i < all.size() ? Optional.of(all.get(i)) : Optional.empty();
  }

  /** Works on the step of a name, if there is one. */
  public void choose(String name) {
    List<Operation> all = plan.get().operations();
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).name().equals(name)) {
        chosen.set(i);
      }
    }
  }

  /** Adds a step after the one worked on, and works on it. */
  public void add(Kind kind) {
    int place = chosen.get() < 0 ? plan.get().operations().size() : chosen.get() + 1;
    desk.editPlan(p -> p.add(place, kind.usual(p.freeName(kind.label()))));
    chosen.set(place);
  }

  /** Takes the step worked on out of the plan. */
  public void remove() {
    int i = chosen.get();
    if (operation().isPresent()) {
      desk.editPlan(p -> p.remove(i));
    }
  }

  /** Moves the step worked on up (−1) or down (+1). */
  public void move(int by) {
    moveTo(chosen.get() + by);
  }

  /** Moves the step worked on to a place. */
  public void moveTo(int place) {
    int from = chosen.get();
    if (operation().isPresent() && place >= 0 && place < plan.get().operations().size()) {
      desk.editPlan(p -> p.move(from, place));
      chosen.set(place);
    }
  }

  /** Does a step, or leaves it out. */
  public void enable(int place, boolean enabled) {
    desk.editPlan(p -> p.enable(place, enabled));
  }

  /** Puts another step in the place of the one worked on. */
  public void replace(Operation other) {
    int i = chosen.get();
    desk.editPlan(p -> p.replace(i, other));
  }

  /** Gives the step worked on another name; one that is taken gets a number. */
  public void rename(String name) {
    operation()
        .filter(o -> !name.isBlank() && !o.name().equals(name.strip()))
        .ifPresent(o -> replace(o.withName(plan.get().freeName(name.strip()))));
  }

  /** Turns a dose of the step worked on; turns that follow each other are undone together. */
  public void turn(String key, double value) {
    turn(List.of(key), List.of(value), key);
  }

  /** Turns several doses of the step worked on at once. */
  public void turn(List<String> keys, List<Double> values, String gesture) {
    int place = chosen.get();
    operation()
        .ifPresent(
            o -> {
              Operation changed = o;
              for (int i = 0; i < keys.size(); i++) {
                changed = turned(changed, keys.get(i), values.get(i));
              }
              Operation end = changed;
              desk.edit(
                  d -> d.withPlan(p -> p.replace(place, end)),
                  place + "/" + o.name() + "/" + gesture);
            });
  }

  /** One dose turned as far as is allowed. */
  private static Operation turned(Operation operation, String key, double value) {
    Dose dose = operation.dose(key);
    double held = Math.max(dose.low(), Math.min(dose.high(), value));
    return operation.withDose(key, held);
  }

  /** Ends a turn. */
  public void endTurn() {
    desk.endGesture();
  }

  /** What is wrong with a step by itself, in sentences. */
  public List<String> findings(int place) {
    return plan.get().operations().get(place).findings("").stream().map(PlanSteps::words).toList();
  }

  private static String words(Finding finding) {
    String words = Character.toUpperCase(finding.found().charAt(0)) + finding.found().substring(1);
    String expected = finding.expected().isEmpty() ? "" : "; expected " + finding.expected();
    return words + expected + "." + (finding.remedy().isEmpty() ? "" : " " + finding.remedy());
  }
}
