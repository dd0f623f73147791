package auricle.rehearsal;

import auricle.anatomy.Auricle;
import auricle.diagnostics.BadInputException;
import auricle.fitting.EarFitter;
import auricle.material.MaterialTables;
import auricle.material.Tissue;
import auricle.plan.EarCase;

/** The main job: rehearses a plan on an ear. */
public final class Rehearsal {
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
    RehearsalRun run = new RehearsalRun(ear, auricle, tissue, watcher);
    RehearsalResult tied = run.run();
    if (settings.reactions() && tied.converged()) {
      tied = tied.with(new Reactions(run.body(), run.operations()).all(watcher));
    }
    if (!settings.springBack() || !tied.converged()) {
      return tied;
    }
    return tied.with(new SpringBack(run.body(), run.operations(), settings, watcher).follow());
  }
}
