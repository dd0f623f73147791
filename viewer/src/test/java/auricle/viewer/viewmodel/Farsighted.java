package auricle.viewer.viewmodel;

import auricle.plan.EarCase;
import auricle.rehearsal.RehearsalWatcher;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.task.Rehearsed.Reach;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Foresees an end, then finds it or not. */
public final class Farsighted extends StandInRehearser {
  private final boolean finds;

  /**
   * @param finds whether the end comes after it was foreseen
   */
  public Farsighted(boolean finds) {
    this.finds = finds;
  }

  @Override
  public Optional<Rehearsed> atOnce(
      EarCase ear, RehearsalWatcher watcher, Consumer<Rehearsed> foreseen) {
    Optional<Rehearsed> end = super.atOnce(ear, watcher, foreseen);
    end.filter(r -> r.reach() == Reach.END).map(Farsighted::ahead).ifPresent(foreseen);
    return end.filter(r -> finds || r.reach() != Reach.END);
  }

  private static Rehearsed ahead(Rehearsed r) {
    return new Rehearsed(
        r.ear(),
        Reach.FORESEEN,
        r.map(),
        r.steps(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        r.basis());
  }
}
