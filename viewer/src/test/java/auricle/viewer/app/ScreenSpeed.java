package auricle.viewer.app;

import auricle.viewer.scene.ClinicalView;
import auricle.viewer.scene.Orbit;
import auricle.viewer.task.SimulationRehearser;
import auricle.viewer.viewmodel.Models;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;

/**
 * A script that measures the viewer: frames a second while the ear is turned, time from a change of
 * a dose to the picture of its result, memory over many changes. The argument is the file that the
 * figures are written to.
 */
public final class ScreenSpeed extends Application {
  private static final int EDITS = 40;
  private static final double TURN_S = 8;

  private Optional<Window> window = Optional.empty();

  @Override
  public void start(Stage stage) throws IOException {
    Window opened =
        new Window(stage, Files.createTempDirectory("auricle"), SimulationRehearser::new);
    window = Optional.of(opened);
    opened.open(Optional.empty());
    opened.bench().closeWelcome();
    Thread script = new Thread(this::script, "script");
    script.setDaemon(true);
    script.start();
  }

  private void script() {
    try {
      Models m = window.orElseThrow().models();
      await(m);
      double frames = frames();
      List<Double> edits = new ArrayList<>();
      for (int i = 0; i < EDITS; i++) {
        edits.add(edit(m, i));
      }
      double[] sorted = edits.stream().mapToDouble(Double::doubleValue).sorted().toArray();
      System.gc();
      Runtime r = Runtime.getRuntime();
      Files.writeString(
          Path.of(getParameters().getUnnamed().get(0)),
          String.format(
              Locale.ROOT,
              "frames a second while turning: %.1f%nedit to picture, ms: median %.0f, 90 %% %.0f, of %d%nheap after, MB: %.0f%n",
              frames,
              sorted[EDITS / 2],
              sorted[EDITS * 9 / 10],
              EDITS,
              (r.totalMemory() - r.freeMemory()) / 1e6));
    } catch (InterruptedException | IOException e) {
      Thread.currentThread().interrupt();
    }
    Platform.runLater(Platform::exit);
  }

  private static void await(Models m) throws InterruptedException {
    m.solving().settle(TimeUnit.SECONDS.toMillis(180));
    Thread.sleep(500);
  }

  private double frames() throws InterruptedException {
    AtomicInteger frames = new AtomicInteger();
    CountDownLatch done = new CountDownLatch(1);
    Orbit from = Orbit.at(ClinicalView.THREE_QUARTER);
    Platform.runLater(
        () ->
            new AnimationTimer() {
              private long start = -1;

              @Override
              public void handle(long now) {
                start = start < 0 ? now : start;
                double seconds = (now - start) / 1e9;
                window.orElseThrow().bench().look(from.turned(40 * seconds, 0));
                frames.incrementAndGet();
                if (seconds > TURN_S) {
                  stop();
                  done.countDown();
                }
              }
            }.start());
    done.await();
    return frames.get() / TURN_S;
  }

  /** Milliseconds from turning a dose until a frame with its result has been drawn. */
  private double edit(Models m, int i) throws InterruptedException {
    CountDownLatch done = new CountDownLatch(1);
    long[] start = new long[1];
    Platform.runLater(
        () -> {
          start[0] = System.nanoTime();
          double gap = 5.5 + 0.05 * (i % 10 + 1);
          m.steps().turn("gap_mm", gap);
          m.steps().endTurn();
          drawn(m, gap, done);
        });
    done.await(60, TimeUnit.SECONDS);
    double ms = (System.nanoTime() - start[0]) / 1e6;
    m.solving().settle(60_000);
    return ms;
  }

  private static void drawn(Models m, double gap, CountDownLatch done) {
    new AnimationTimer() {
      private int after;

      @Override
      public void handle(long now) {
        boolean there =
            m.showing()
                .result()
                .get()
                .map(r -> r.ear().plan().operations().get(m.steps().chosen().get()))
                .map(o -> o.dose("gap_mm").value() == gap)
                .orElse(false);
        after = there ? after + 1 : 0;
        if (after == 2) {
          stop();
          done.countDown();
        }
      }
    }.start();
  }

  @Override
  public void stop() {
    window.ifPresent(Window::close);
  }

  /** Starts the run with the switch that 3D without a graphics card needs. */
  public static final class Main {
    private Main() {}

    /** The file for the figures. */
    public static void main(String[] arguments) {
      System.setProperty("prism.forceGPU", "true");
      Application.launch(ScreenSpeed.class, Arrays.copyOf(arguments, 1));
    }
  }
}
