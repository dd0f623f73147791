package auricle.viewer.task;

import auricle.plan.EarCase;
import auricle.rehearsal.RehearsalWatcher;
import java.util.Optional;

/** What computes: the simulation, or a stand-in in tests. Called on a worker's thread only. */
public interface Rehearser {
  /**
   * Works out every step of a plan.
   *
   * @return empty if it was cancelled
   * @throws CannotRehearse if the ear or plan cannot be worked out, with the reasons
   */
  Optional<Rehearsed> tied(EarCase ear, RehearsalWatcher watcher) throws CannotRehearse;

  /**
   * Adds what becomes of it over a year.
   *
   * @return empty if it was cancelled
   * @throws CannotRehearse with the reasons
   */
  Optional<Rehearsed> overAYear(Rehearsed tied, RehearsalWatcher watcher) throws CannotRehearse;
}
