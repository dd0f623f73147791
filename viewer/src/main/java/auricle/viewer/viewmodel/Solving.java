package auricle.viewer.viewmodel;

import auricle.plan.EarCase;
import auricle.viewer.task.LatestWins;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.task.Rehearser;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * Works out the ear on the desk whenever it changes, off the screen's thread: what can be had at
 * once, then every step of the plan, then the year after it. The latest change wins.
 */
public final class Solving implements AutoCloseable {
  private final Desk desk;
  private final Rehearser rehearser;
  private final Executor screen;
  private final LatestWins queue = new LatestWins("rehearsal");
  private final ReadOnlyObjectWrapper<Work> work = new ReadOnlyObjectWrapper<>(Work.ready());
  private final ReadOnlyObjectWrapper<Optional<Rehearsed>> result =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Rehearsed>> foreseen =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private volatile Optional<EarCase> wanted = Optional.empty();

  /** What is worked out only when it is asked for, because it takes longer. */
  public sealed interface Extra {
    /** What each dose does at the end of the plan. */
    record Reactions() implements Extra {}

    /** The spread over a year by so many samples of tissue. */
    record Spread(int samples) implements Extra {}
  }

  /**
   * @param desk whose ear is worked out
   * @param screen runs what changes properties
   */
  public Solving(Desk desk, Rehearser rehearser, Executor screen) {
    this.desk = desk;
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

  /** What is foreseen of the ear on the desk while its result is awaited; never at rest. */
  public ReadOnlyObjectProperty<Optional<Rehearsed>> foreseen() {
    return foreseen.getReadOnlyProperty();
  }

  /** Ends what is being done; what is shown stays, and is said to be what it is. */
  public void cancel() {
    Optional<EarCase> ear = wanted;
    wanted = Optional.empty();
    queue.submit(overtaken -> {});
    foreseen.set(Optional.empty());
    boolean present = result.get().map(Rehearsed::ear).equals(ear);
    work.set(Work.stopped(present ? result.get() : Optional.empty()));
  }

  /** Works the ear out again. */
  public void again(EarCase ear) {
    wanted = Optional.empty();
    follow(ear);
  }

  /** Works something out that takes longer, for the ear on the desk. */
  public void ask(Extra extra) {
    begin(desk.document().get().ear(), Optional.of(extra));
  }

  private void follow(EarCase ear) {
    if (wanted.filter(ear::equals).isEmpty()) {
      begin(ear, Optional.empty());
    }
  }

  private void begin(EarCase ear, Optional<Extra> extra) {
    wanted = Optional.of(ear);
    Optional<Rehearsed> known = result.get().filter(r -> r.ear().equals(ear));
    work.set(Work.solving("working out the ear", 0, known));
    Pass pass = new Pass(rehearser, ear, extra, new OnScreen());
    queue.submit(overtaken -> pass.run(known, () -> overtaken.getAsBoolean() || wanted.isEmpty()));
  }

  /** Shows on the screen's thread what a worker has found. */
  private final class OnScreen implements Pass.Screen {
    @Override
    public void show(Rehearsed r, boolean more) {
      screen.execute(
          () -> {
            result.set(Optional.of(r));
            foreseen.set(Optional.empty());
            if (isWanted(r.ear())) {
              work.set(more ? Work.solving("", 0, result.get()) : Work.of(r));
            }
          });
    }

    @Override
    public void foresee(Optional<Rehearsed> end) {
      screen.execute(
          () -> {
            foreseen.set(end.filter(r -> isWanted(r.ear())));
            if (foreseen.get().isPresent()) {
              work.set(Work.solving("", 0, end));
            }
          });
    }

    @Override
    public void tell(EarCase ear, Work state) {
      screen.execute(
          () -> {
            if (isWanted(ear)) {
              work.set(state);
            }
          });
    }
  }

  private boolean isWanted(EarCase ear) {
    return wanted.filter(ear::equals).isPresent();
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
