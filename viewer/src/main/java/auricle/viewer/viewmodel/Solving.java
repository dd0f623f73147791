package auricle.viewer.viewmodel;

import auricle.plan.EarCase;
import auricle.rehearsal.RehearsalWatcher;
import auricle.viewer.task.CannotRehearse;
import auricle.viewer.task.LatestWins;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.task.Rehearser;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * Works out the ear on the desk whenever it changes, off the screen's thread: first the operation
 * itself, then the year after it. The latest change wins.
 */
public final class Solving implements AutoCloseable {
  /** A run that is overtaken may go on for so long, so that a turned control shows its effect. */
  private static final long PATIENCE_MS = 400;

  private final Rehearser rehearser;
  private final Executor screen;
  private final LatestWins queue = new LatestWins("rehearsal");
  private final ReadOnlyObjectWrapper<Work> work = new ReadOnlyObjectWrapper<>(Work.ready());
  private final ReadOnlyObjectWrapper<Optional<Rehearsed>> result =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private volatile Optional<EarCase> wanted = Optional.empty();

  /**
   * @param desk whose ear is worked out
   * @param screen runs what changes properties
   */
  public Solving(Desk desk, Rehearser rehearser, Executor screen) {
    this.rehearser = rehearser;
    this.screen = screen;
    desk.document().addListener((o, was, now) -> follow(now.ear()));
    follow(desk.document().get().ear());
  }

  /** What is being done. */
  public ReadOnlyObjectProperty<Work> work() {
    return work.getReadOnlyProperty();
  }

  /** The newest result; it may be older than the plan while {@link #work} says so. */
  public ReadOnlyObjectProperty<Optional<Rehearsed>> result() {
    return result.getReadOnlyProperty();
  }

  /** Ends what is being done; the last result stays and is said to be older than the plan. */
  public void cancel() {
    wanted = Optional.empty();
    queue.submit(overtaken -> {});
    work.set(Work.stopped());
  }

  /** Works the ear out again. */
  public void again(EarCase ear) {
    wanted = Optional.empty();
    follow(ear);
  }

  private void follow(EarCase ear) {
    if (wanted.filter(ear::equals).isPresent()) {
      return;
    }
    wanted = Optional.of(ear);
    work.set(Work.solving("working out the ear", 0));
    queue.submit(overtaken -> run(ear, overtaken));
  }

  private void run(EarCase ear, BooleanSupplier overtaken) {
    long start = System.nanoTime();
    BooleanSupplier late =
        () -> overtaken.getAsBoolean() && System.nanoTime() - start > PATIENCE_MS * 1_000_000;
    try {
      Optional<Rehearsed> tied = rehearser.tied(ear, watcher(ear, late));
      tied.ifPresent(r -> show(r, !r.ear().plan().enabled().isEmpty()));
      if (tied.isPresent() && !overtaken.getAsBoolean()) {
        Optional<Rehearsed> year = rehearser.overAYear(tied.orElseThrow(), watcher(ear, overtaken));
        year.ifPresentOrElse(r -> show(r, false), () -> tell(ear, Work.of(tied.orElseThrow())));
      }
    } catch (CannotRehearse e) {
      tell(ear, Work.refused(e.reasons()));
    } catch (RuntimeException e) {
      tell(ear, Work.refused(List.of("The program made an error of its own: " + e + ".")));
    }
  }

  private void show(Rehearsed r, boolean more) {
    screen.execute(
        () -> {
          result.set(Optional.of(r));
          if (wanted.filter(r.ear()::equals).isPresent()) {
            work.set(more && r.converged() ? Work.solving("working out the year", 0) : Work.of(r));
          }
        });
  }

  private void tell(EarCase ear, Work state) {
    screen.execute(
        () -> {
          if (wanted.filter(ear::equals).isPresent()) {
            work.set(state);
          }
        });
  }

  private RehearsalWatcher watcher(EarCase ear, BooleanSupplier overtaken) {
    return new RehearsalWatcher() {
      @Override
      public void progress(String words, double share) {
        tell(ear, Work.solving(words, share));
      }

      @Override
      public boolean cancelled() {
        return overtaken.getAsBoolean() || wanted.isEmpty();
      }
    };
  }

  /** Waits until everything is worked out; for tests and scripts. */
  public boolean settle(long milliseconds) throws InterruptedException {
    return queue.settle(milliseconds);
  }

  @Override
  public void close() {
    wanted = Optional.empty();
    queue.close();
  }
}
