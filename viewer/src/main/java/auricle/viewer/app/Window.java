package auricle.viewer.app;

import auricle.viewer.lesson.LessonReader;
import auricle.viewer.store.Recovery;
import auricle.viewer.store.Settings;
import auricle.viewer.task.Rehearser;
import auricle.viewer.view.Exports;
import auricle.viewer.view.FileDialogs;
import auricle.viewer.view.Later;
import auricle.viewer.view.Menus;
import auricle.viewer.view.Workbench;
import auricle.viewer.viewmodel.Desk;
import auricle.viewer.viewmodel.Files;
import auricle.viewer.viewmodel.Lessons;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.Models;
import auricle.viewer.viewmodel.OtherSide;
import auricle.viewer.viewmodel.PlanSteps;
import auricle.viewer.viewmodel.Reactions;
import auricle.viewer.viewmodel.Showing;
import auricle.viewer.viewmodel.Solving;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.beans.InvalidationListener;
import javafx.beans.Observable;
import javafx.scene.Scene;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import javafx.stage.Stage;
import javafx.util.Duration;

/** One window with everything behind it. */
public final class Window implements AutoCloseable {
  /** A change is on the disk after this time, however the program ends. */
  private static final double KEEP_AFTER_S = 0.25;

  private final Stage stage;
  private final Beginning begun;
  private final Models models;
  private final Files files;
  private final Workbench bench;
  private final Settings settings;
  private final FileDialogs dialogs;
  private final Exports exports;
  private final Lessons lessons;
  private final Memory memory;

  /**
   * @param stage to be shown in
   * @param folder where settings and unsaved work are kept
   * @param begun what computes, and what is shown first
   * @param others make what computes a second ear
   */
  Window(Stage stage, Path folder, Beginning begun, Supplier<Rehearser> others) {
    this.stage = stage;
    this.begun = begun;
    this.settings = new Settings(folder);
    Beginning.Parts parts = begun.parts();
    Desk desk = parts.desk();
    Solving solving = parts.solving();
    this.models =
        new Models(
            desk,
            new PlanSteps(desk),
            solving,
            new Showing(solving.result(), solving.foreseen()),
            new OtherSide(desk, others, Platform::runLater),
            new Look());
    this.files = new Files(desk, settings, Recovery.claim(folder), parts.reader());
    files.whenLaid(models.showing()::end);
    this.bench = new Workbench(models);
    this.exports = new Exports(bench, models.showing());
    this.dialogs = new FileDialogs(stage, files, desk, exports);
    this.lessons = new Lessons(files, models.showing(), bench::view);
    bench.addReactions(new Reactions(solving));
    bench.addLessons(lessons);
    bench
        .top()
        .getChildren()
        .add(new Menus(models, files, bench, dialogs, this::quit).bar(worked()));
    bench.addMessages(files);
    stage.setScene(new Scene(bench, 1280, 800));
    stage.getScene().addEventHandler(DragEvent.DRAG_OVER, Window::accept);
    stage.getScene().addEventHandler(DragEvent.DRAG_DROPPED, this::dropped);
    stage.setOnCloseRequest(e -> closing(e::consume));
    title();
    this.memory = new Memory(stage, settings, models.look(), bench);
    memory.recall();
    keepUnsavedWork();
  }

  private Map<String, Runnable> worked() {
    Map<String, Runnable> all = new LinkedHashMap<>();
    WorkedScenarios.titles().forEach((name, title) -> all.put(title, () -> openWorked(name)));
    return all;
  }

  private void openWorked(String name) {
    if (dialogs.mayLeave()) {
      files.openText(name, WorkedScenarios.text(name));
    }
  }

  /** Shows the window; opens a file, or what an earlier run left unsaved. */
  public void open(Optional<Path> file) {
    tellWhenDrawn();
    begun.catchUp();
    stage.show();
    Platform.runLater(memory::insist);
    file.ifPresent(files::open);
    files.left().ifPresent(files::recover);
    if (!models.desk().unsaved().get()) {
      bench.welcome();
    }
    bench.ear3d().requestFocus();
  }

  private void tellWhenDrawn() {
    Later drawn = new Later(begun::drawn);
    models
        .showing()
        .moment()
        .addListener(
            new InvalidationListener() {
              @Override
              public void invalidated(Observable moment) {
                moment.removeListener(this);
                drawn.ask();
              }
            });
  }

  private static void accept(DragEvent e) {
    if (e.getDragboard().hasFiles()) {
      e.acceptTransferModes(TransferMode.COPY);
    }
  }

  private void dropped(DragEvent e) {
    e.getDragboard().getFiles().stream().findFirst().ifPresent(f -> openDropped(f.toPath()));
    e.setDropCompleted(true);
  }

  /** A dropped file may be a lesson or a scenario; its first lines tell. */
  private void openDropped(Path file) {
    if (LessonReader.isLesson(file)) {
      lessons.begin(file);
      bench.openTab("Lessons");
    } else {
      dialogs.open(file);
    }
  }

  private void title() {
    Runnable show = () -> stage.setTitle(files.title());
    models.desk().document().addListener(o -> show.run());
    models.desk().unsaved().addListener(o -> show.run());
    files.file().addListener(o -> show.run());
    show.run();
    models.look().fullScreen().addListener((o, was, now) -> stage.setFullScreen(now));
    stage.fullScreenProperty().addListener((o, was, now) -> models.look().fullScreen().set(now));
  }

  private void keepUnsavedWork() {
    PauseTransition soon = new PauseTransition(Duration.seconds(KEEP_AFTER_S));
    soon.setOnFinished(e -> files.keep());
    models.desk().document().addListener(o -> soon.play());
    models.desk().unsaved().addListener(o -> soon.play());
  }

  private void quit() {
    closing(() -> {});
  }

  private void closing(Runnable stay) {
    if (dialogs.mayLeave()) {
      files.discard();
      memory.keep();
      Platform.exit();
    } else {
      stay.run();
    }
  }

  /** The view models. */
  public Models models() {
    return models;
  }

  /** The files. */
  public Files files() {
    return files;
  }

  /** What is in the window. */
  public Workbench bench() {
    return bench;
  }

  /** What writes pictures and shapes. */
  public Exports exports() {
    return exports;
  }

  @Override
  public void close() {
    models.solving().close();
    models.other().close();
  }
}
