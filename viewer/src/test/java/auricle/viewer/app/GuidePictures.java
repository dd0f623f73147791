package auricle.viewer.app;

import auricle.viewer.scene.ClinicalView;
import auricle.viewer.task.Rehearser;
import auricle.viewer.task.SimulationRehearser;
import auricle.viewer.view.Exports;
import auricle.viewer.view.Workbench;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.Models;
import auricle.viewer.viewmodel.Paint;
import auricle.viewer.viewmodel.StandInRehearser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.control.ButtonBase;
import javafx.stage.Stage;

/**
 * Draws the pictures of the guide: {@code GuidePictures FOLDER [WIDTH HEIGHT]}. With the property
 * {@code auricle.stand.in} the screens alone are drawn, without the solver.
 */
public final class GuidePictures extends Application {
  /** Panels are drawn some frames after the ear, however slow these are. */
  private static final int FRAMES = 6;

  private static final long LONGEST_S = 240;

  private Optional<Window> window = Optional.empty();
  private Path folder = Path.of(".");
  private int width = 1280;
  private int height = 800;

  @Override
  public void start(Stage stage) throws IOException {
    var arguments = getParameters().getUnnamed();
    folder = Files.createDirectories(Path.of(arguments.get(0)));
    width = arguments.size() > 1 ? Integer.parseInt(arguments.get(1)) : width;
    height = arguments.size() > 2 ? Integer.parseInt(arguments.get(2)) : height;
    Window opened =
        new Window(stage, OwnFolder.make(), new Beginning(rehearser()), GuidePictures::rehearser);
    window = Optional.of(opened);
    opened.open(Optional.empty());
    stage.setWidth(width);
    stage.setHeight(height);
    opened.models().look().textScale().set(height > 1000 ? 1.3 : 1);
    Thread script = new Thread(this::script, "script");
    script.setDaemon(true);
    script.start();
  }

  private static Rehearser rehearser() {
    return Boolean.getBoolean("auricle.stand.in")
        ? new StandInRehearser()
        : new SimulationRehearser();
  }

  private void script() {
    try {
      Models m = window.orElseThrow().models();
      shot("01-first-start", () -> {});
      shot("02-side", () -> view(ClinicalView.SIDE));
      shot("03-back-bites", () -> view(ClinicalView.BACK));
      shot("04-front", () -> view(ClinicalView.FRONT));
      shot("05-section", () -> tab("Section", ClinicalView.ABOVE));
      shot("06-course", () -> tab("Course", ClinicalView.THREE_QUARTER));
      shot("07-year", () -> m.showing().show(lastMoment(m)));
      shot("08-strain", () -> strain(m));
      shot("17-settled-strain", () -> settled(m));
      shot("09-before", () -> before(m));
      shot("10-dark", () -> dark(m));
      shot("11-contrast", () -> m.look().theme().set(Look.Theme.CONTRAST));
      shot("12-lesson", () -> lesson(m));
      shot("13-lesson-question", this::question);
      shot("14-ear-measured", this::measured);
      shot("15-target", () -> tab("Target", ClinicalView.THREE_QUARTER));
      onScreen(this::reactionsTab);
      Thread.sleep(500); // a tab comes into the window with the next frames
      shot("16-reactions", () -> press("#work-reactions"));
      shot("18-both-ears", this::pair);
      Platform.runLater(Platform::exit);
    } catch (InterruptedException | IOException e) {
      Platform.runLater(Platform::exit);
    }
  }

  private static int lastMoment(Models m) {
    return m.showing().result().get().map(r -> r.course().size() - 1).orElse(0);
  }

  private void view(ClinicalView v) {
    window.orElseThrow().bench().closeWelcome();
    window.orElseThrow().bench().view(v);
  }

  private void tab(String name, ClinicalView v) {
    window.orElseThrow().bench().openTab(name);
    view(v);
  }

  private void strain(Models m) {
    m.showing().paint().set(Paint.STRAIN);
    m.showing().show(m.showing().result().get().map(r -> r.steps().size() - 1).orElse(0));
    tab("Balance", ClinicalView.THREE_QUARTER);
  }

  private void settled(Models m) {
    m.showing().paint().set(Paint.SETTLED);
    m.showing().show(lastMoment(m));
  }

  private void before(Models m) {
    m.showing().paint().set(Paint.REGIONS);
    m.showing().show(0);
    view(ClinicalView.SIDE);
  }

  private void dark(Models m) {
    m.look().theme().set(Look.Theme.DARK);
    m.showing().paint().set(Paint.SKIN);
    m.showing().show(m.showing().result().get().map(r -> r.steps().size() - 1).orElse(0));
    view(ClinicalView.THREE_QUARTER);
  }

  private void lesson(Models m) {
    m.look().theme().set(Look.Theme.LIGHT);
    window.orElseThrow().bench().openTab("Lessons");
  }

  /** The question of a lesson, in large type, as on a projector. */
  private void question() {
    Platform.runLater(() -> press("#lesson-coupling"));
    Platform.runLater(() -> press("#lesson-next"));
    Platform.runLater(() -> press("#lesson-next"));
  }

  private void press(String id) {
    if (bench().lookup(id) instanceof ButtonBase button) {
      button.fire();
    } else {
      throw new IllegalStateException("no button " + id + " on the screen");
    }
  }

  private void measured() {
    window.orElseThrow().files().openText("first", WorkedScenarios.text("open_fold.yaml"));
    window.orElseThrow().models().showing().paint().set(Paint.SKIN);
    tab("Balance", ClinicalView.THREE_QUARTER);
    bench().openTab("Ear");
  }

  private void reactionsTab() {
    bench().openTab("Plan");
    bench().openTab("Reactions");
  }

  private void pair() {
    window
        .orElseThrow()
        .files()
        .openText("pair", WorkedScenarios.text("two_ears_that_differ.yaml"));
    tab("Both ears", ClinicalView.FRONT);
  }

  private Workbench bench() {
    return window.orElseThrow().bench();
  }

  private void shot(String name, Runnable before) throws InterruptedException, IOException {
    onScreen(before);
    Models m = window.orElseThrow().models();
    m.solving().settle(TimeUnit.SECONDS.toMillis(LONGEST_S));
    m.other().settle(TimeUnit.SECONDS.toMillis(LONGEST_S));
    Thread.sleep(1200);
    for (int frame = 0; frame < FRAMES; frame++) {
      OnScreen.drawn(() -> true);
    }
    byte[][] png = new byte[1][];
    onScreen(
        () -> {
          try {
            png[0] = Exports.png(window.orElseThrow().bench().getScene().snapshot(null));
          } catch (IOException e) {
            png[0] = new byte[0];
          }
        });
    Files.write(folder.resolve(name + ".png"), png[0]);
  }

  private static void onScreen(Runnable action) throws InterruptedException {
    CountDownLatch done = new CountDownLatch(1);
    Platform.runLater(
        () -> {
          action.run();
          done.countDown();
        });
    done.await();
  }

  @Override
  public void stop() {
    window.ifPresent(Window::close);
  }
}
