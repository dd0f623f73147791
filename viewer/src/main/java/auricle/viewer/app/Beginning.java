package auricle.viewer.app;

import auricle.scenario.ScenarioReader;
import auricle.viewer.task.Rehearser;
import auricle.viewer.task.SimulationRehearser;
import auricle.viewer.viewmodel.Desk;
import auricle.viewer.viewmodel.Solving;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import javafx.application.Platform;

/**
 * Reads what is shown first and begins to work it out while the toolkit starts: with two processors
 * the ear is there sooner. The ear comes with the first frame if it is ready, and its plan is
 * worked out when it has been drawn.
 */
final class Beginning {
  private final CountDownLatch drawn = new CountDownLatch(1);
  private final Queue<Runnable> changes = new ConcurrentLinkedQueue<>();
  private volatile boolean opened;
  private final CompletableFuture<Parts> parts = new CompletableFuture<>();

  /**
   * What a window begins with.
   *
   * @param reader of scenario files
   * @param desk with the first scenario on it
   * @param solving that works it out
   */
  record Parts(ScenarioReader reader, Desk desk, Solving solving) {}

  /** Made once, when it is first asked for. */
  private static final class Program {
    private static final Beginning ITS = new Beginning(new SimulationRehearser());

    private Program() {}
  }

  /** Begins at once. */
  Beginning(Rehearser rehearser) {
    Thread thread = new Thread(() -> make(rehearser), "beginning");
    thread.setDaemon(true);
    thread.start();
  }

  /** That of the program; the first call begins it. */
  static Beginning ofProgram() {
    return Program.ITS;
  }

  private void make(Rehearser rehearser) {
    try {
      ScenarioReader reader = ScenarioReader.shipped();
      Desk desk = new Desk(WorkedScenarios.first(reader));
      Rehearser picture = new PictureFirst(rehearser, drawn, FrameDrawn::await);
      parts.complete(new Parts(reader, desk, new Solving(desk, picture, this::onScreen)));
    } catch (RuntimeException e) {
      parts.completeExceptionally(e);
    }
  }

  /** Kept until there is a screen; then made on its thread, in the order in which they came. */
  private void onScreen(Runnable change) {
    changes.add(change);
    if (opened) {
      Platform.runLater(this::catchUp);
    }
  }

  /** Makes the changes that have come so far; on the screen's thread. */
  void catchUp() {
    opened = true;
    for (Runnable next = changes.poll(); next != null; next = changes.poll()) {
      next.run();
    }
  }

  /** Says that the ear has been drawn: its plan may be worked out. */
  void drawn() {
    drawn.countDown();
  }

  /** The parts, waited for. */
  Parts parts() {
    return parts.join();
  }
}
