package auricle.viewer.task;

import auricle.plan.EarCase;
import auricle.rehearsal.RehearsalWatcher;
import java.util.Optional;
import java.util.function.Consumer;

/** What computes: the simulation, or a stand-in in tests. Called on a worker's thread only. */
public interface Rehearser {
  /**
   * What can be shown of a change at once: the ear before its plan when the ear is new, or the end
   * of the plan when doses were turned, followed from where the ear stood.
   *
   * @param foreseen may be given the end that is foreseen, before it is at rest
   * @return empty if nothing can be had so soon, or it was cancelled
   * @throws CannotRehearse if the ear or plan cannot be worked out, with the reasons
   */
  Optional<Rehearsed> atOnce(EarCase ear, RehearsalWatcher watcher, Consumer<Rehearsed> foreseen)
      throws CannotRehearse;

  /**
   * Works out every step of a plan.
   *
   * @param onTheWay is given the steps that have come to rest, while others are still to be done
   * @return empty if it was cancelled
   * @throws CannotRehearse if the ear or plan cannot be worked out, with the reasons
   */
  Optional<Rehearsed> tied(EarCase ear, RehearsalWatcher watcher, Consumer<Rehearsed> onTheWay)
      throws CannotRehearse;

  /**
   * Adds what becomes of it over a year.
   *
   * @param samples tissues drawn from their spread for the bands; 0 for none
   * @return empty if it was cancelled
   * @throws CannotRehearse with the reasons
   */
  Optional<Rehearsed> overAYear(Rehearsed tied, int samples, RehearsalWatcher watcher)
      throws CannotRehearse;

  /**
   * Adds what each dose of the plan does to every figure at the end of the operation.
   *
   * @return empty if it was cancelled
   * @throws CannotRehearse with the reasons
   */
  Optional<Rehearsed> withReactions(Rehearsed tied, RehearsalWatcher watcher) throws CannotRehearse;
}
