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
import auricle.surgery.RestState;
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
  private final List<Operation> operations;
  private final List<StepResult> steps = new ArrayList<>();
  private final List<RestState> states = new ArrayList<>();
  private final List<EarBody> bodies = new ArrayList<>();

  RehearsalRun(EarCase ear, Auricle auricle, Tissue tissue, RehearsalWatcher watcher) {
    this(ear, auricle, tissue, watcher, new EarMeasurer(auricle));
  }

  private RehearsalRun(
      EarCase ear, Auricle auricle, Tissue tissue, RehearsalWatcher watcher, EarMeasurer measurer) {
    this.ear = ear;
    this.auricle = auricle;
    this.tissue = tissue;
    this.watcher = watcher;
    this.measurer = measurer;
    operations = ear.plan().enabled();
  }

  /** All steps from the first. */
  RehearsalResult run() throws BadInputException {
    EarBody made = begin();
    double[] earlier = made.unknowns().clone();
    add(Optional.empty(), earlier, untouched());
    return goOn(0);
  }

  /** The steps after those that an earlier run of the same ear has in common with this one. */
  RehearsalResult runFrom(RehearsalRun earlier, int common) throws BadInputException {
    if (watcher.cancelled()) {
      return stopped(earlier, common);
    }
    EarBody made = begin();
    RestState state = earlier.states.get(common);
    Settled resumed = made.resume(earlier.body(), operations.subList(0, common), state, solving());
    if (resumed.outcome() == Outcome.CANCELLED) {
      return stopped(earlier, common);
    }
    if (!resumed.converged()) {
      return forPlan(ear, watcher).run();
    }
    steps.addAll(earlier.steps.subList(0, common + 1));
    states.addAll(earlier.states.subList(0, common + 1));
    return goOn(common);
  }

  /** What is known when this run is ended before any step of its own. */
  private RehearsalResult stopped(RehearsalRun earlier, int common) {
    steps.addAll(earlier.steps.subList(0, common));
    steps.add(earlier.steps.get(common).with(notBegun()));
    return new RehearsalResult(ear, auricle, steps, rows(), earlier.provenance());
  }

  /** A run of another plan on the same ear. */
  RehearsalRun forPlan(EarCase other, RehearsalWatcher told) {
    return new RehearsalRun(other, auricle, tissue, told, measurer);
  }

  /** The operations that are done. */
  List<Operation> operations() {
    return operations;
  }

  private EarBody begin() throws BadInputException {
    EarBody made = EarBody.of(auricle, tissue, operations);
    bodies.add(made);
    return made;
  }

  private RehearsalResult goOn(int done) {
    for (int i = done; i < operations.size() && !after().cancelled(); i++) {
      Operation operation = operations.get(i);
      watcher.progress(operation.name(), (i + 1.0) / (operations.size() + 1));
      double[] earlier = body().unknowns().clone();
      StepOutcome outcome =
          watcher.cancelled() ? notBegun() : outcome(body().apply(operation, solving()));
      add(Optional.of(operation), earlier, outcome);
      if (outcome.converged() && i + 1 < operations.size()) {
        watcher.reached(List.copyOf(steps));
      }
    }
    return new RehearsalResult(ear, auricle, steps, rows(), provenance());
  }

  private Solving solving() {
    return Solving.watched((lambda, iteration) -> !watcher.cancelled());
  }

  /** Where the ear came to rest after an operation. */
  RestState stateAfter(int operation) {
    return states.get(operation + 1);
  }

  /** What measures the ear. */
  EarMeasurer measurer() {
    return measurer;
  }

  /** The body after the last step. */
  EarBody body() {
    return bodies.get(0);
  }

  /** How many operations from the first on another plan has in common with this one's. */
  int common(List<Operation> other) {
    int n = 0;
    while (n < Math.min(operations.size(), other.size())
        && n + 1 < steps.size()
        && steps.get(n + 1).outcome().converged()
        && operations.get(n).equals(other.get(n))) {
      n++;
    }
    return n;
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

  static StepOutcome outcome(Settled s) {
    return new StepOutcome(
        s.converged(),
        s.outcome() == Outcome.CANCELLED,
        s.words(),
        s.iterations(),
        s.residual_n(),
        s.tolerance_n(),
        s.events());
  }

  private void add(Optional<Operation> operation, double[] earlier, StepOutcome outcome) {
    steps.add(read(body(), measurer, operation, earlier, outcome));
    states.add(body().save());
  }

  /** The present state of a body as a step. */
  static StepResult read(
      EarBody body,
      EarMeasurer measurer,
      Optional<Operation> operation,
      double[] earlier,
      StepOutcome outcome) {
    EarView view = new EarView(body, measurer);
    return new StepResult(
        operation.map(Operation::name).orElse("before"),
        operation,
        outcome,
        measurer.measure(body.unknowns()),
        view.threads(),
        view.extremes(),
        view.shape(earlier));
  }

  private List<UsedRow> rows() {
    Set<UsedRow> rows = new LinkedHashSet<>(tissue.rows());
    ear.tissue().press().ifPresent(press -> rows.add(tissue.rimStiffness()));
    for (Operation operation : operations) {
      if (operation instanceof TiedOperation tied) {
        tissue.thread(tied.thread()).ifPresent(thread -> rows.addAll(thread.rows()));
      }
    }
    return List.copyOf(rows);
  }

  private Provenance provenance() {
    double worst = steps.stream().mapToDouble(s -> s.outcome().residual_n()).max().orElse(0);
    int iterations = steps.stream().mapToInt(s -> s.outcome().iterations()).sum();
    String version = RehearsalRun.class.getPackage().getImplementationVersion();
    return new Provenance(
        version == null ? "development" : version,
        Runtime.version().toString(),
        auricle.level().key(),
        auricle.mesh().vertexCount(),
        auricle.mesh().topology().triangleCount(),
        body().shell().energy().size(),
        worst,
        iterations,
        CONVENTIONS);
  }
}
