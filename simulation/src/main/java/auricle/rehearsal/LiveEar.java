package auricle.rehearsal;

import auricle.anatomy.Auricle;
import auricle.diagnostics.BadInputException;
import auricle.fitting.EarFitter;
import auricle.material.MaterialTables;
import auricle.plan.EarCase;
import auricle.surgery.EarBody;
import auricle.surgery.Settled;
import auricle.surgery.Solving;
import auricle.surgery.Standing;
import java.util.List;
import java.util.Optional;

/**
 * An ear that is worked on: keeps its solved states, so that a change of the plan is computed from
 * the first step it concerns, and a turn of doses from the present end of the plan.
 *
 * <p>For one thread at a time.
 */
public final class LiveEar {
  private final RehearsalSettings settings;
  private final MaterialTables tables;
  private EarCase ear;
  private RehearsalRun run;
  private RehearsalResult result;

  /** Where the body of the run stood at its end; doses may have been turned since. */
  private Standing end;

  private LiveEar(
      EarCase ear, RehearsalSettings settings, MaterialTables tables, RehearsalWatcher watcher)
      throws BadInputException {
    this.settings = settings;
    this.tables = tables;
    this.ear = ear;
    run = fresh(ear, watcher);
    result = run.run();
    end = run.body().standing();
  }

  /**
   * Rehearses a plan and keeps what is needed to change it.
   *
   * @throws BadInputException if the ear cannot be made, or a row is not in the tables
   */
  public static LiveEar of(
      EarCase ear, RehearsalSettings settings, MaterialTables tables, RehearsalWatcher watcher)
      throws BadInputException {
    return new LiveEar(ear, settings, tables, watcher);
  }

  private RehearsalRun fresh(EarCase of, RehearsalWatcher watcher) throws BadInputException {
    Auricle auricle = EarFitter.fit(of.ear(), settings.mesh(), "/ear").auricle();
    return new RehearsalRun(of, auricle, EarTissue.of(of, auricle, tables), watcher);
  }

  /** The ear and plan that {@link #result} is of. */
  public EarCase ear() {
    return ear;
  }

  /** The last whole rehearsal. */
  public RehearsalResult result() {
    return result;
  }

  /**
   * What every dose of the plan does to every measurement at its end, per unit of the dose, from
   * the stiffness at rest; doses that are tensions are left out.
   *
   * @param watcher is told of every dose, and may end it
   * @return none if it was cancelled
   * @throws BadInputException never, since the plan has been run
   * @throws IllegalStateException if the end of the plan is not at rest
   */
  public List<Reaction> reactions(RehearsalWatcher watcher) throws BadInputException {
    if (!result.converged()) {
      throw new IllegalStateException("no reactions: the plan did not come to rest");
    }
    backToTheEnd();
    return new Reactions(run.body(), run.operations()).all(watcher);
  }

  /** The last whole rehearsal with the time after the operation, as the settings have it. */
  public RehearsalResult healed(RehearsalSettings over, RehearsalWatcher watcher) {
    if (!result.converged()) {
      return result;
    }
    backToTheEnd();
    return new SpringBack(run.body(), run.operations(), over, watcher).after(result);
  }

  private void backToTheEnd() {
    if (!run.body().operations().equals(run.operations())) {
      run.body().become(end);
    }
  }

  /**
   * Rehearses another case: from the first step that differs, if the ear and its tissue are the
   * same. If it is cancelled, this ear stays as it was.
   *
   * @return what was found; marked as cancelled if it was
   * @throws BadInputException if the ear cannot be made, or a row is not in the tables
   */
  public RehearsalResult rerun(EarCase next, RehearsalWatcher watcher) throws BadInputException {
    boolean same = next.ear().equals(ear.ear()) && next.tissue().equals(ear.tissue());
    RehearsalRun other = same ? run.forPlan(next, watcher) : fresh(next, watcher);
    int common = same ? run.common(next.plan().enabled()) : 0;
    RehearsalResult found = common > 0 ? other.runFrom(run, common) : other.run();
    if (!found.cancelled()) {
      ear = next;
      run = other;
      result = found;
      end = other.body().standing();
    }
    return found;
  }

  /**
   * Follows a turn of doses from the present end of the plan, without going through the steps
   * again: for showing while a control moves or a bite is pulled. {@link #rerun} then gives the
   * whole; {@link EarBody#turn} says what may differ.
   *
   * @param watcher may be told of where that leads before it is reached
   * @return the end of the plan under the changed doses; empty if the case differs from {@link
   *     #ear} in more than doses, or does not come to rest in this way
   * @throws BadInputException never, since the same threads have been tied before
   */
  public Optional<StepResult> turn(EarCase next, RehearsalWatcher watcher)
      throws BadInputException {
    EarBody body = run.body();
    Turn turn = new Turn(body.operations(), next.plan().enabled());
    boolean same = next.ear().equals(ear.ear()) && next.tissue().equals(ear.tissue());
    if (!same || !result.converged() || !turn.dosesAlone()) {
      return Optional.empty();
    }
    double[] earlier = body.unknowns().clone();
    Solving solving =
        Solving.watched((l, i) -> !watcher.cancelled()).telling(() -> watcher.foreseen(ahead()));
    Settled settled = body.turn(turn.now(), run::stateAfter, solving);
    return settled.converged()
        ? Optional.of(
            RehearsalRun.read(
                body,
                run.measurer(),
                Optional.of(turn.turned()),
                earlier,
                RehearsalRun.outcome(settled)))
        : Optional.empty();
  }

  /** The present state of the body, before it is at rest. */
  private Foreseen ahead() {
    EarView view = new EarView(run.body(), run.measurer());
    return new Foreseen(view.moved(result.after().shape()), view.threads());
  }
}
