package auricle.viewer.view;

import auricle.viewer.scene.Orbit;
import auricle.viewer.store.GifFile;
import auricle.viewer.viewmodel.Showing;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;

/**
 * Draws a run of pictures, one a frame of the screen so that the window stays alive: the ear on a
 * turntable, or the course from before to a year after.
 */
public final class Animation {
  private static final int TURNTABLE = 36;
  private static final int TURN_MS = 90;
  private static final int STEP_MS = 900;

  private final EarPane ear;
  private final Showing showing;
  private final double em;

  Animation(EarPane ear, Showing showing, double em) {
    this.ear = ear;
    this.showing = showing;
    this.em = em;
  }

  /**
   * The ear turned once around.
   *
   * @param file a GIF; of any other ending, the first of a run of PNG files beside it
   * @param height_px of each picture; its width follows from the shape of the pane
   * @param done is told at the end: nothing, or why it failed
   */
  public void turntable(Path file, int height_px, Consumer<List<String>> done) {
    Orbit from = ear.scene().orbit();
    PictureRun.Drawing turned =
        i -> {
          ear.scene().look(from.turned(360.0 * i / TURNTABLE, 0));
          return drawn(height_px);
        };
    PictureRun run = new PictureRun(TURNTABLE, turned, keeping(file, TURN_MS));
    run(run, () -> ear.scene().look(from), done);
  }

  /** The course, one picture a moment; see {@link #turntable}. */
  public void course(Path file, int height_px, Consumer<List<String>> done) {
    int count = showing.result().get().map(r -> r.course().size()).orElse(0);
    int shown = showing.index();
    PictureRun.Drawing moment =
        i -> {
          showing.show(i);
          return drawn(height_px);
        };
    PictureRun run = new PictureRun(count, moment, keeping(file, STEP_MS));
    run(run, () -> showing.show(shown), done);
  }

  private void run(PictureRun run, Runnable back, Consumer<List<String>> done) {
    new AnimationTimer() {
      @Override
      public void handle(long now) {
        if (!run.drawNext()) {
          stop();
          back.run();
          finish(run, done);
        }
      }
    }.start();
  }

  private BufferedImage drawn(int height_px) {
    return Exports.enlarged(ear, height_px / ear.getHeight(), em);
  }

  /** Writes beside the screen's own work: a run of large pictures takes seconds. */
  private static void finish(PictureRun run, Consumer<List<String>> done) {
    Thread writing =
        new Thread(
            () -> {
              List<String> told = run.keep();
              Platform.runLater(() -> done.accept(told));
            },
            "animation");
    writing.setDaemon(true);
    writing.start();
  }

  /** How a run of pictures is kept, by the ending of the file. */
  private static PictureRun.Keeping keeping(Path file, int each_ms) {
    String name = file.getFileName().toString();
    return name.toLowerCase(Locale.ROOT).endsWith(".gif")
        ? frames -> GifFile.write(file, frames, each_ms)
        : frames -> pictures(file, frames);
  }

  /** Frames as ear-01.png, ear-02.png beside each other. */
  private static void pictures(Path file, List<BufferedImage> frames) throws IOException {
    String name = file.getFileName().toString().replaceAll("\\.[Pp][Nn][Gg]$", "");
    Files.createDirectories(file.toAbsolutePath().getParent());
    for (int i = 0; i < frames.size(); i++) {
      Path to = file.resolveSibling(String.format(Locale.ROOT, "%s-%02d.png", name, i + 1));
      auricle.viewer.store.AtomicFile.write(to, Exports.png(frames.get(i)));
    }
  }
}
