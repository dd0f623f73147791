package auricle.viewer.viewmodel;

import auricle.plan.EarCase;
import auricle.rehearsal.RehearsalWatcher;
import auricle.viewer.task.CannotRehearse;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.task.Rehearsed.Reach;
import auricle.viewer.task.Rehearser;
import auricle.viewer.viewmodel.Solving.Extra;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** One ear worked out from what is shown first to what takes longest; on a worker's thread. */
final class Pass {
  /** A run that is overtaken may go on for so long, so that a turned control shows its effect. */
  private static final long PATIENCE_MS = 400;

  /** A control turned step by step is turned again within this; the worker is free for it then. */
  private static final long LULL_MS = 700;

  private static final long LOOK_EVERY_MS = 4;

  /** Progress is told no oftener: each time the screen is drawn, by the processor that solves. */
  private static final long TELL_EVERY_NS = 150_000_000;

  /** Steps on the way are shown no oftener. */
  private static final long PART_EVERY_NS = 250_000_000;

  private final Rehearser rehearser;
  private final EarCase ear;
  private final Optional<Extra> extra;
  private final Screen screen;

  /** Where it is shown; called on the worker's thread. */
  interface Screen {
    /**
     * Shows a result.
     *
     * @param more whether more is to come
     */
    void show(Rehearsed result, boolean more);

    /** Shows what is foreseen in place of the result there is; empty for that again. */
    void foresee(Optional<Rehearsed> end);

    /** Tells how the work stands. */
    void tell(EarCase ear, Work work);
  }

  /**
   * @param extra what is asked for beside steps and year
   * @param screen where results are shown
   */
  Pass(Rehearser rehearser, EarCase ear, Optional<Extra> extra, Screen screen) {
    this.rehearser = rehearser;
    this.ear = ear;
    this.extra = extra;
    this.screen = screen;
  }

  private void show(Rehearsed result, boolean more) {
    Marks.find(result.ear().plan(), result.map());
    screen.show(result, more);
  }

  private void tell(Work work) {
    screen.tell(ear, work);
  }

  private void foresee(Rehearsed end) {
    Marks.find(end.ear().plan(), end.map());
    screen.foresee(Optional.of(end));
  }

  /** Works out what is not known yet. */
  void run(Optional<Rehearsed> known, BooleanSupplier overtaken) {
    try {
      Optional<Rehearsed> steps = known.filter(r -> extra.isPresent() && r.whole());
      if (steps.isEmpty()) {
        steps = plan(overtaken);
      }
      if (steps.isPresent() && !overtaken.getAsBoolean()) {
        afterwards(steps.orElseThrow(), overtaken);
      }
    } catch (CannotRehearse e) {
      tell(Work.refused(e.findings()));
    } catch (RuntimeException e) {
      tell(Work.broken("The program made an error of its own: " + e + "."));
    }
  }

  private Optional<Rehearsed> plan(BooleanSupplier overtaken) throws CannotRehearse {
    long start = System.nanoTime();
    BooleanSupplier late =
        () -> overtaken.getAsBoolean() && System.nanoTime() - start > PATIENCE_MS * 1_000_000;
    Optional<Rehearsed> first = atOnce(late);
    first.ifPresent(r -> show(r, true));
    if (first.isPresent() && overtakenInALull(overtaken)) {
      return Optional.empty();
    }
    BooleanSupplier enough = first.isPresent() ? overtaken : late;
    boolean endShown = first.map(r -> r.reach() == Reach.END).orElse(false);
    Optional<Rehearsed> steps = rehearser.tied(ear, watcher(first, enough), parts(endShown));
    steps.ifPresent(r -> show(r, hasMore(r)));
    return steps;
  }

  /** What can be had at once; what was foreseen is taken back if it does not come. */
  private Optional<Rehearsed> atOnce(BooleanSupplier late) throws CannotRehearse {
    Optional<Rehearsed> first = Optional.empty();
    try {
      first = rehearser.atOnce(ear, watcher(Optional.empty(), late), this::foresee);
      return first;
    } finally {
      if (first.isEmpty()) {
        screen.foresee(Optional.empty());
      }
    }
  }

  /** Shows how far the plan has come, unless its end is on the screen already. */
  private Consumer<Rehearsed> parts(boolean endShown) {
    return new Consumer<>() {
      private long shown = System.nanoTime() - PART_EVERY_NS;

      @Override
      public void accept(Rehearsed part) {
        long now = System.nanoTime();
        if (!endShown && now - shown >= PART_EVERY_NS) {
          shown = now;
          show(part, true);
        }
      }
    };
  }

  /** Waits a little before longer work: a control that is being turned changes again at once. */
  private static boolean overtakenInALull(BooleanSupplier overtaken) {
    try {
      for (int i = 0; i < LULL_MS / LOOK_EVERY_MS && !overtaken.getAsBoolean(); i++) {
        Thread.sleep(LOOK_EVERY_MS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return overtaken.getAsBoolean();
  }

  private static boolean hasMore(Rehearsed r) {
    return r.converged() && !r.ear().plan().enabled().isEmpty();
  }

  private void afterwards(Rehearsed steps, BooleanSupplier overtaken) throws CannotRehearse {
    Rehearsed present = steps;
    if (extra.orElse(null) instanceof Extra.Reactions && hasMore(steps)) {
      RehearsalWatcher watcher = watcher(Optional.of(steps), overtaken);
      present = rehearser.withReactions(steps, watcher).orElse(steps);
      show(present, present.reach() == Reach.STEPS);
    }
    int samples = extra.orElse(null) instanceof Extra.Spread s ? s.samples() : 0;
    if (hasMore(present) && (samples > 0 || present.reach() == Reach.STEPS)) {
      year(present, samples, overtaken);
    }
  }

  private void year(Rehearsed present, int samples, BooleanSupplier overtaken)
      throws CannotRehearse {
    RehearsalWatcher watcher = watcher(Optional.of(present), overtaken);
    rehearser
        .overAYear(present, samples, watcher)
        .ifPresentOrElse(r -> show(r, false), () -> tell(Work.of(present)));
  }

  private RehearsalWatcher watcher(Optional<Rehearsed> shown, BooleanSupplier enough) {
    return new RehearsalWatcher() {
      private long told = System.nanoTime() - TELL_EVERY_NS;

      @Override
      public void progress(String words, double share) {
        long now = System.nanoTime();
        if (now - told >= TELL_EVERY_NS) {
          told = now;
          tell(Work.solving(words, share, shown));
        }
      }

      @Override
      public boolean cancelled() {
        return enough.getAsBoolean();
      }
    };
  }
}
