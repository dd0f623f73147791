package auricle.viewer.task;

import auricle.plan.EarCase;
import auricle.rehearsal.RehearsalWatcher;
import java.util.List;
import java.util.Optional;

/** The simulation itself. */
public final class SimulationRehearser implements Rehearser {
  @Override
  public Optional<Rehearsed> tied(EarCase ear, RehearsalWatcher watcher) throws CannotRehearse {
    throw new CannotRehearse(List.of("Not wired yet."));
  }

  @Override
  public Optional<Rehearsed> overAYear(Rehearsed tied, RehearsalWatcher watcher) {
    return Optional.empty();
  }
}
