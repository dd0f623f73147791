package auricle.viewer.viewmodel;

import auricle.measurement.Figure;
import auricle.plan.Dose;
import auricle.plan.EarCase;
import auricle.plan.Operation;
import auricle.plan.Plan;
import auricle.rehearsal.RehearsalWatcher;
import auricle.viewer.task.CannotRehearse;
import auricle.viewer.task.LatestWins;
import auricle.viewer.task.Reaction;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.task.Rehearser;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * What each dose of a plan does to every third: each is turned a little up and a little down, and
 * the whole plan solved again. Differences of two solutions, so everything the solver knows is in
 * them.
 */
public final class Reactions implements AutoCloseable {
  private static final List<String> DOSES =
      List.of(
          "tension_n",
          "gap_mm",
          "depth_fraction",
          "spacing_mm",
          "width_mm",
          "depth_mm",
          "length_mm");

  private final Rehearser rehearser;
  private final Executor screen;
  private final LatestWins queue = new LatestWins("reactions");
  private final ObservableList<Reaction> list = FXCollections.observableArrayList();
  private final ReadOnlyStringWrapper words = new ReadOnlyStringWrapper("");

  /**
   * @param rehearser that solves
   * @param screen runs what changes properties
   */
  public Reactions(Rehearser rehearser, Executor screen) {
    this.rehearser = rehearser;
    this.screen = screen;
  }

  /** The reactions found so far. */
  public ObservableList<Reaction> list() {
    return list;
  }

  /** What is being done. */
  public ReadOnlyStringProperty words() {
    return words.getReadOnlyProperty();
  }

  /** Works out the reactions of an ear's plan; what was there before is dropped. */
  public void work(EarCase ear) {
    list.clear();
    words.set("Working out the reactions …");
    queue.submit(overtaken -> run(ear, overtaken));
  }

  private void run(EarCase ear, BooleanSupplier overtaken) {
    List<Operation> operations = ear.plan().operations();
    try {
      for (int i = 0; i < operations.size(); i++) {
        for (Dose dose : operations.get(i).doses()) {
          if (operations.get(i).enabled()
              && DOSES.contains(dose.key())
              && !overtaken.getAsBoolean()) {
            reaction(ear, i, dose, overtaken).ifPresent(r -> screen.execute(() -> list.add(r)));
          }
        }
      }
      if (!overtaken.getAsBoolean()) {
        screen.execute(
            () ->
                words.set(
                    "Each dose was turned up and down by the amount shown, and the plan solved again."));
      }
    } catch (CannotRehearse e) {
      screen.execute(() -> words.set(String.join(" ", e.reasons())));
    }
  }

  private Optional<Reaction> reaction(EarCase ear, int i, Dose dose, BooleanSupplier overtaken)
      throws CannotRehearse {
    double step =
        dose.key().equals("tension_n") ? Math.min(dose.step(), 0.3 * dose.value()) : dose.step();
    double up = Math.min(dose.high(), dose.value() + step);
    double down = Math.max(dose.low(), dose.value() - step);
    Optional<Rehearsed> more = solve(ear, ear.plan().withDose(i, dose.key(), up), overtaken);
    Optional<Rehearsed> less = solve(ear, ear.plan().withDose(i, dose.key(), down), overtaken);
    if (more.isEmpty() || less.isEmpty()) {
      return Optional.empty();
    }
    double share = step / (up - down);
    List<Double> changes = new ArrayList<>();
    for (Figure f : ChangeTable.FIGURES) {
      double change = f.of(more.get().tied().measures()) - f.of(less.get().tied().measures());
      changes.add(change * share);
    }
    String per =
        String.format(
            Locale.ROOT,
            "+%.2g %s",
            step,
            dose.unit().startsWith("of") ? "of the thickness" : dose.unit());
    return Optional.of(
        new Reaction(
            ear.plan().operations().get(i).name(),
            dose.key(),
            dose.label(),
            per,
            changes,
            more.get().tied().outcome().converged() && less.get().tied().outcome().converged()));
  }

  private Optional<Rehearsed> solve(EarCase ear, Plan plan, BooleanSupplier overtaken)
      throws CannotRehearse {
    return rehearser.tied(
        ear.withPlan(plan),
        new RehearsalWatcher() {
          @Override
          public void progress(String what, double share) {}

          @Override
          public boolean cancelled() {
            return overtaken.getAsBoolean();
          }
        });
  }

  @Override
  public void close() {
    queue.close();
  }
}
