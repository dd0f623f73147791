package auricle.rehearsal;

import auricle.anatomy.Auricle;
import auricle.diagnostics.BadInputException;
import auricle.material.Tissue;
import auricle.material.UsedRow;
import auricle.measurement.EarMeasurer;
import auricle.numerics.Outcome;
import auricle.plan.EarCase;
import auricle.plan.Operation;
import auricle.plan.TiedOperation;
import auricle.surgery.EarBody;
import auricle.surgery.Settled;
import auricle.surgery.Solving;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One rehearsal under way: the steps in order, each led to rest and measured. */
final class RehearsalRun {
  private static final List<String> CONVENTIONS =
      List.of(
          "the ear is free of stress before the plan",
          "distances are those of the mid-surface from the mastoid plane",
          "threads run straight between bites and without friction",
          "strain and stress at the root of a cut and under a thread are not resolved");

  private final EarCase ear;
  private final Auricle auricle;
  private final Tissue tissue;
  private final RehearsalWatcher watcher;
  private final EarMeasurer measurer;
  private final List<StepResult> steps = new ArrayList<>();

  RehearsalRun(EarCase ear, Auricle auricle, Tissue tissue, RehearsalWatcher watcher) {
    this.ear = ear;
    this.auricle = auricle;
    this.tissue = tissue;
    this.watcher = watcher;
    measurer = new EarMeasurer(auricle);
  }

  RehearsalResult run() throws BadInputException {
    List<Operation> operations = ear.plan().enabled();
    EarBody body = EarBody.of(auricle, tissue, operations);
    Solving solving = Solving.watched((lambda, iteration) -> !watcher.cancelled());
    double[] earlier = body.unknowns().clone();
    steps.add(read("before", Optional.empty(), body, earlier, untouched()));
    for (int i = 0; i < operations.size() && !after().cancelled(); i++) {
      Operation operation = operations.get(i);
      watcher.progress(operation.name(), (i + 1.0) / (operations.size() + 1));
      earlier = body.unknowns().clone();
      StepOutcome outcome =
          watcher.cancelled() ? notBegun() : outcome(body.apply(operation, solving));
      steps.add(read(operation.name(), Optional.of(operation), body, earlier, outcome));
    }
    watcher.progress("done", 1);
    return new RehearsalResult(ear, auricle, steps, rows(operations), provenance(body));
  }

  private StepOutcome after() {
    return steps.get(steps.size() - 1).outcome();
  }

  private static StepOutcome notBegun() {
    return new StepOutcome(false, true, "cancelled before it was begun", 0, 0, 0, List.of());
  }

  private static StepOutcome untouched() {
    return new StepOutcome(true, false, "at rest, nothing done yet", 0, 0, 0, List.of());
  }

  private static StepOutcome outcome(Settled s) {
    return new StepOutcome(
        s.converged(),
        s.outcome() == Outcome.CANCELLED,
        s.words(),
        s.iterations(),
        s.residual_n(),
        s.tolerance_n(),
        s.events());
  }

  private StepResult read(
      String label,
      Optional<Operation> operation,
      EarBody body,
      double[] earlier,
      StepOutcome outcome) {
    EarView view = new EarView(body);
    return new StepResult(
        label,
        operation,
        outcome,
        measurer.measure(body.unknowns()),
        view.threads(),
        view.extremes(),
        view.shape(earlier));
  }

  private List<UsedRow> rows(List<Operation> operations) {
    Set<UsedRow> rows = new LinkedHashSet<>(tissue.rows());
    for (Operation operation : operations) {
      if (operation instanceof TiedOperation tied) {
        tissue.thread(tied.thread()).ifPresent(thread -> rows.addAll(thread.rows()));
      }
    }
    return List.copyOf(rows);
  }

  private Provenance provenance(EarBody body) {
    double worst = steps.stream().mapToDouble(s -> s.outcome().residual_n()).max().orElse(0);
    int iterations = steps.stream().mapToInt(s -> s.outcome().iterations()).sum();
    String version = RehearsalRun.class.getPackage().getImplementationVersion();
    return new Provenance(
        version == null ? "development" : version,
        Runtime.version().toString(),
        auricle.level().key(),
        auricle.mesh().vertexCount(),
        auricle.mesh().topology().triangleCount(),
        body.shell().energy().size(),
        worst,
        iterations,
        CONVENTIONS);
  }
}
