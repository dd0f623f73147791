package auricle.rehearsal;

import auricle.anatomy.Auricle;
import auricle.diagnostics.BadInputException;
import auricle.fitting.EarFitter;
import auricle.material.MaterialTables;
import auricle.material.Tissue;
import auricle.plan.EarCase;

/** The main job: rehearses a plan on an ear. */
public final class Rehearsal {
  /** How long parts take, roughly, beside the plan itself: for progress alone. */
  private static final double PLAN = 1;

  private static final double REACTIONS = 2;

  private Rehearsal() {}

  /**
   * Rehearses a plan with the material tables that come with the program.
   *
   * @throws BadInputException if the ear cannot be made, or a row is not in the tables
   */
  public static RehearsalResult run(
      EarCase ear, RehearsalSettings settings, RehearsalWatcher watcher) throws BadInputException {
    return run(ear, settings, MaterialTables.shipped(), watcher);
  }

  /** The same with other material tables. */
  public static RehearsalResult run(
      EarCase ear, RehearsalSettings settings, MaterialTables tables, RehearsalWatcher watcher)
      throws BadInputException {
    watcher.progress("shaping the ear", 0);
    Auricle auricle = EarFitter.fit(ear.ear(), settings.mesh(), "/ear").auricle();
    Tissue tissue = EarTissue.of(ear, auricle, tables);
    RehearsalResult found = run(ear, settings, auricle, tissue, watcher);
    watcher.progress("done", 1);
    return found;
  }

  private static RehearsalResult run(
      EarCase ear,
      RehearsalSettings settings,
      Auricle auricle,
      Tissue tissue,
      RehearsalWatcher watcher)
      throws BadInputException {
    double after = settings.springBack() ? SpringBack.work(settings) : 0;
    double all = PLAN + (settings.reactions() ? REACTIONS : 0) + after;
    double planned = PLAN / all;
    double reacted = 1 - after / all;
    RehearsalRun run = new RehearsalRun(ear, auricle, tissue, new Portion(watcher, 0, planned));
    RehearsalResult tied = run.run();
    if (settings.reactions() && tied.converged()) {
      RehearsalWatcher told = new Portion(watcher, planned, reacted);
      tied = tied.with(new Reactions(run.body(), run.operations()).all(told));
    }
    if (!settings.springBack() || !tied.converged()) {
      return tied;
    }
    RehearsalWatcher told = new Portion(watcher, reacted, 1);
    return new SpringBack(run.body(), run.operations(), settings, told).after(tied);
  }
}
