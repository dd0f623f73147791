package auricle.viewer.viewmodel;

import auricle.plan.EarCase;
import auricle.rehearsal.RehearsalWatcher;
import auricle.viewer.task.CannotRehearse;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.task.Rehearsed.Reach;
import auricle.viewer.task.Rehearser;
import auricle.viewer.viewmodel.Solving.Extra;
import java.util.Optional;
import java.util.function.BiConsumer;
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
  private final BiConsumer<Rehearsed, Boolean> show;
  private final BiConsumer<EarCase, Work> tell;

  /**
   * @param extra what is asked for beside steps and year
   * @param show is given each result, and whether more is to come
   * @param tell is told how the work stands
   */
  Pass(
      Rehearser rehearser,
      EarCase ear,
      Optional<Extra> extra,
      BiConsumer<Rehearsed, Boolean> show,
      BiConsumer<EarCase, Work> tell) {
    this.rehearser = rehearser;
    this.ear = ear;
    this.extra = extra;
    this.show =
        (r, more) -> {
          Marks.find(r.ear().plan(), r.map());
          show.accept(r, more);
        };
    this.tell = tell;
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
      tell.accept(ear, Work.refused(e.findings()));
    } catch (RuntimeException e) {
      tell.accept(ear, Work.broken("The program made an error of its own: " + e + "."));
    }
  }

  private Optional<Rehearsed> plan(BooleanSupplier overtaken) throws CannotRehearse {
    long start = System.nanoTime();
    BooleanSupplier late =
        () -> overtaken.getAsBoolean() && System.nanoTime() - start > PATIENCE_MS * 1_000_000;
    Optional<Rehearsed> first = rehearser.atOnce(ear, watcher(Optional.empty(), late));
    first.ifPresent(r -> show.accept(r, true));
    if (first.isPresent() && overtakenInALull(overtaken)) {
      return Optional.empty();
    }
    BooleanSupplier enough = first.isPresent() ? overtaken : late;
    boolean endShown = first.map(r -> r.reach() == Reach.END).orElse(false);
    Optional<Rehearsed> steps = rehearser.tied(ear, watcher(first, enough), parts(endShown));
    steps.ifPresent(r -> show.accept(r, hasMore(r)));
    return steps;
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
          show.accept(part, true);
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
      show.accept(present, present.reach() == Reach.STEPS);
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
        .ifPresentOrElse(r -> show.accept(r, false), () -> tell.accept(ear, Work.of(present)));
  }

  private RehearsalWatcher watcher(Optional<Rehearsed> shown, BooleanSupplier enough) {
    return new RehearsalWatcher() {
      private long told = System.nanoTime() - TELL_EVERY_NS;

      @Override
      public void progress(String words, double share) {
        long now = System.nanoTime();
        if (now - told >= TELL_EVERY_NS) {
          told = now;
          tell.accept(ear, Work.solving(words, share, shown));
        }
      }

      @Override
      public boolean cancelled() {
        return enough.getAsBoolean();
      }
    };
  }
}
