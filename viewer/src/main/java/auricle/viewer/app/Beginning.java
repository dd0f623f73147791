package auricle.viewer.app;

import auricle.scenario.ScenarioReader;
import auricle.viewer.task.Rehearser;
import auricle.viewer.task.SimulationRehearser;
import auricle.viewer.viewmodel.Desk;
import auricle.viewer.viewmodel.Solving;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import javafx.application.Platform;

/**
 * Reads what is shown first and begins to work it out while the toolkit starts: with two processors
 * the ear is there sooner.
 */
final class Beginning {
  private final CountDownLatch toolkit = new CountDownLatch(1);
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
      parts.complete(new Parts(reader, desk, new Solving(desk, rehearser, this::onScreen)));
    } catch (RuntimeException e) {
      parts.completeExceptionally(e);
    }
  }

  /** Runs on the screen's thread, once there is one. */
  private void onScreen(Runnable change) {
    try {
      toolkit.await();
      Platform.runLater(change);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** The parts, waited for; to be called on the screen's thread. */
  Parts parts() {
    Parts made = parts.join();
    toolkit.countDown();
    return made;
  }
}
