package auricle.viewer.app;

import auricle.viewer.scene.ClinicalView;
import auricle.viewer.task.SimulationRehearser;
import auricle.viewer.view.Exports;
import auricle.viewer.view.Workbench;
import auricle.viewer.viewmodel.Kind;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.Models;
import auricle.viewer.viewmodel.Paint;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.control.ButtonBase;
import javafx.stage.Stage;

/**
 * Goes through the screens and draws each of them in several windows: {@code ScreenTour FOLDER
 * WINDOWS [SCREEN…]}; a window is WIDTHxHEIGHT-THEME-SCALE, several are parted by commas; without
 * names, all screens. For whoever wants to look at every screen after a change of the look.
 */
public final class ScreenTour extends Application {
  private static final long LONGEST_MS = 240_000;

  /** One size of window with a theme and a size of text. */
  private record Pane(String name, int width, int height, Look.Theme theme, double scale) {
    static Pane of(String text) {
      String[] part = text.split("[x-]");
      return new Pane(
          text,
          Integer.parseInt(part[0]),
          Integer.parseInt(part[1]),
          Look.Theme.valueOf(part[2].toUpperCase(java.util.Locale.ROOT)),
          Double.parseDouble(part[3]));
    }
  }

  private final Map<String, Runnable> screens = new LinkedHashMap<>();
  private Optional<Window> window = Optional.empty();
  private Optional<Stage> stage = Optional.empty();

  @Override
  public void start(Stage shown) throws IOException {
    stage = Optional.of(shown);
    window =
        Optional.of(
            new Window(
                shown,
                OwnFolder.make(),
                new Beginning(new SimulationRehearser()),
                SimulationRehearser::new));
    window.orElseThrow().open(Optional.empty());
    list();
    Thread script = new Thread(this::script, "script");
    script.setDaemon(true);
    script.start();
  }

  private void list() {
    screens.put("01-first-start", () -> {});
    for (ClinicalView v : ClinicalView.values()) {
      screens.put("02-view-" + v.digit(), () -> view(v));
    }
    screens.put("03-balance", () -> tab("Balance", ClinicalView.THREE_QUARTER));
    screens.put("03-section", () -> tab("Section", ClinicalView.ABOVE));
    screens.put("03-course", () -> tab("Course", ClinicalView.THREE_QUARTER));
    screens.put("03-both-ears", () -> tab("Both ears", ClinicalView.FRONT));
    screens.put("03-ear", () -> tab("Ear", ClinicalView.THREE_QUARTER));
    screens.put("03-target", () -> tab("Target", ClinicalView.THREE_QUARTER));
    screens.put("03-reactions-before", () -> tab("Reactions", ClinicalView.THREE_QUARTER));
    screens.put("03-reactions", () -> press("#work-reactions"));
    screens.put("04-year", this::year);
    for (Paint p : Paint.values()) {
      screens.put("05-" + p, () -> paint(p));
    }
    for (Kind k : Kind.values()) {
      screens.put("06-" + k, () -> plan(k));
    }
    screens.put("07-lessons", () -> tab("Lessons", ClinicalView.THREE_QUARTER));
    for (String lesson : List.of("coupling", "hidden_helix", "spring_back", "lobule")) {
      screens.put("07-" + lesson + "-1", () -> begin(lesson));
      for (int page = 2; page < 7; page++) {
        screens.put("07-" + lesson + "-" + page, this::next);
      }
    }
    screens.put("07-lesson-full", () -> full(true));
    screens.put("07-lesson-end", () -> full(false));
    screens.put("08-keys", () -> bench().keys());
    screens.put("08-errors", this::errors);
    screens.put("09-pair", this::pair);
    for (String s : List.of("upper_too_far", "full_thickness_cut", "deep_bowl")) {
      screens.put("10-" + s, () -> worked(s));
    }
  }

  private void year() {
    models().showing().show(models().showing().result().get().orElseThrow().course().size() - 1);
    tab("Balance", ClinicalView.FRONT);
  }

  private void paint(Paint p) {
    models().showing().paint().set(p);
    tab("Balance", ClinicalView.SIDE);
  }

  private void plan(Kind k) {
    models().showing().paint().set(Paint.SKIN);
    worked("open_fold");
    models().steps().add(k);
    models().steps().chosen().set(models().steps().plan().get().operations().size() - 1);
    bench().openTab("Balance");
    bench().openTab("Plan");
    view(ClinicalView.BACK);
  }

  private void begin(String lesson) {
    if (bench().lookup("#lesson-end") instanceof ButtonBase b) {
      b.fire();
    }
    bench().openTab("Lessons");
    press("#lesson-" + lesson);
  }

  private void next() {
    if (bench().lookup("#answer-2") instanceof ButtonBase b && !b.isDisabled()) {
      b.fire();
    } else {
      press("#lesson-next");
    }
  }

  private void full(boolean now) {
    models().look().fullScreen().set(now);
    if (!now) {
      press("#lesson-end");
    }
  }

  private void errors() {
    bench().closeWelcome();
    window
        .orElseThrow()
        .files()
        .openText(
            "bad.yaml",
            WorkedScenarios.text("open_fold.yaml").replace("gap_mm", "gap").replace("age", "agee"));
  }

  private void pair() {
    window.orElseThrow().files().messages().clear();
    worked("two_ears_that_differ");
    tab("Both ears", ClinicalView.FRONT);
  }

  private void worked(String name) {
    window.orElseThrow().files().openText(name, WorkedScenarios.text(name + ".yaml"));
    tab("Balance", ClinicalView.THREE_QUARTER);
  }

  private void view(ClinicalView v) {
    bench().closeWelcome();
    bench().view(v);
  }

  private void tab(String name, ClinicalView v) {
    bench().openTab(name);
    view(v);
  }

  private void press(String id) {
    if (bench().lookup(id) instanceof ButtonBase button) {
      button.fire();
    }
  }

  private Models models() {
    return window.orElseThrow().models();
  }

  private Workbench bench() {
    return window.orElseThrow().bench();
  }

  private void script() {
    try {
      List<String> arguments = getParameters().getUnnamed();
      Path folder = Files.createDirectories(Path.of(arguments.get(0)));
      List<Pane> panes = new ArrayList<>();
      for (String text : arguments.get(1).split(",")) {
        panes.add(Pane.of(text));
      }
      Set<String> wanted = Set.copyOf(arguments.subList(2, arguments.size()));
      for (var screen : screens.entrySet()) {
        if (wanted.isEmpty() || wanted.stream().anyMatch(screen.getKey()::startsWith)) {
          draw(folder, screen.getKey(), screen.getValue(), panes);
        }
      }
    } catch (InterruptedException | IOException | RuntimeException e) {
      e.printStackTrace();
    }
    Platform.runLater(Platform::exit);
  }

  private void draw(Path folder, String name, Runnable screen, List<Pane> panes)
      throws InterruptedException, IOException {
    OnScreen.run(screen);
    Thread.sleep(100);
    models().solving().settle(LONGEST_MS);
    models().other().settle(LONGEST_MS);
    for (Pane pane : panes) {
      OnScreen.run(() -> set(pane));
      Thread.sleep(1100);
      byte[][] png = new byte[1][];
      OnScreen.run(() -> png[0] = snapshot());
      Files.createDirectories(folder.resolve(pane.name()));
      Files.write(folder.resolve(pane.name()).resolve(name + ".png"), png[0]);
    }
  }

  private void set(Pane pane) {
    models().look().theme().set(pane.theme());
    models().look().textScale().set(pane.scale());
    stage.orElseThrow().setWidth(pane.width());
    stage.orElseThrow().setHeight(pane.height());
  }

  private byte[] snapshot() {
    try {
      return Exports.png(bench().getScene().snapshot(null));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Override
  public void stop() {
    window.ifPresent(Window::close);
  }
}
