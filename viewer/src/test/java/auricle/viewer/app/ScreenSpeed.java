package auricle.viewer.app;

import auricle.viewer.scene.EarSurface;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.task.Rehearsed.Reach;
import auricle.viewer.task.SimulationRehearser;
import auricle.viewer.viewmodel.Models;
import auricle.viewer.viewmodel.StandInRehearser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Rectangle;
import javafx.stage.Stage;

/**
 * A script that measures the viewer in about two minutes: from start to the first ear, frames a
 * second while the ear is turned (beside what an empty window of that size takes), from a change of
 * a dose to its picture, memory over many changes. The first argument is the file that the figures
 * are written to; any others name the parts to measure: {@code frames}, {@code edits}, {@code
 * stand-in}.
 */
public final class ScreenSpeed extends Application {
  private static final double TURN_S = 6;
  private static final int TIE_EDITS = 30;
  private static final int DEPTH_EDITS = 6;
  private static final int STAND_IN_EDITS = 1000;

  /** Of each turn, until the views were given what was solved; on the screen's thread. */
  private final List<Double> solved_ms = new ArrayList<>();

  /** Of each turn, until the picture of the rest was there. */
  private final List<Double> rested_ms = new ArrayList<>();

  /** Of each turn, how far the first picture was from the rest; on the screen's thread. */
  private final List<Double> off_mm = new ArrayList<>();

  private final StringBuilder report = new StringBuilder();
  private Optional<Stage> stage = Optional.empty();
  private Optional<Window> window = Optional.empty();

  @Override
  public void start(Stage shown) throws IOException {
    stage = Optional.of(shown);
    Path folder = OwnFolder.make();
    open(new Window(shown, folder, Beginning.ofProgram(), SimulationRehearser::new));
    Thread script = new Thread(this::script, "script");
    script.setDaemon(true);
    script.start();
  }

  private void open(Window opened) {
    window = Optional.of(opened);
    opened.open(Optional.empty());
    opened.bench().closeWelcome();
    size(1280, 800);
  }

  private void size(int width, int height) {
    stage.orElseThrow().setWidth(width);
    stage.orElseThrow().setHeight(height);
  }

  private void script() {
    try {
      begun();
      if (asked("frames")) {
        frames();
      }
      if (asked("edits")) {
        edits();
      }
      if (asked("stand-in")) {
        standIn();
      }
    } catch (InterruptedException | IOException e) {
      Thread.currentThread().interrupt();
    } finally {
      Platform.runLater(Platform::exit);
    }
  }

  private boolean asked(String part) {
    List<String> named = getParameters().getUnnamed();
    return named.size() < 2 || named.contains(part);
  }

  /** Adds a line; the file has all lines so far, should the run be ended. */
  private void line(String pattern, Object... values) {
    report.append(String.format(Locale.ROOT, pattern, values)).append('\n');
    try {
      Files.writeString(Path.of(getParameters().getUnnamed().get(0)), report);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double sinceStart_s() {
    return (System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime()) / 1e3;
  }

  private void begun() throws InterruptedException {
    until(r -> true);
    line(
        "from start of Java to an ear on the screen: %.1f s, processor %.1f s",
        sinceStart_s(), OnScreen.cpu_ms() / 1e3);
    until(r -> r.reach() == Reach.STEPS || r.reach() == Reach.YEAR);
    line("to every step of the plan: %.1f s", sinceStart_s());
    until(r -> r.reach() == Reach.YEAR);
    line("to the year after it: %.1f s", sinceStart_s());
  }

  private void frames() throws InterruptedException {
    int[][] sizes = {{1280, 800}, {2560, 1440}};
    for (int[] s : sizes) {
      OnScreen.run(() -> size(s[0], s[1]));
      Thread.sleep(1500);
      long cpu = OnScreen.cpu_ms();
      double rate = OnScreen.framesWhileTurning(window.orElseThrow().bench(), TURN_S);
      double each = (OnScreen.cpu_ms() - cpu) / (rate * TURN_S);
      line(
          "frames a second while turning, window %d x %d: %.1f; processor %.0f ms a frame, all threads",
          s[0], s[1], rate, each);
      least(s[0], s[1]);
    }
    OnScreen.run(() -> size(1280, 800));
  }

  /** What any window of that size takes: an empty one in which a small square moves. */
  private void least(int width, int height) throws InterruptedException {
    Rectangle square = new Rectangle(8, 8);
    Stage[] bare = new Stage[1];
    OnScreen.run(
        () -> {
          bare[0] = new Stage();
          bare[0].setScene(new Scene(new Pane(square), width, height));
          bare[0].show();
        });
    Thread.sleep(1500);
    long cpu = OnScreen.cpu_ms();
    double rate = OnScreen.frames(s -> square.setX(100 + 50 * Math.sin(s)), TURN_S);
    double each = (OnScreen.cpu_ms() - cpu) / (rate * TURN_S);
    line("  an empty window with a moving square: %.1f; processor %.0f ms a frame", rate, each);
    OnScreen.run(bare[0]::close);
  }

  /** Changes of a tie while it is being turned, then of a depth, each with time to rest. */
  private void edits() throws InterruptedException {
    Models m = models();
    double heap = OnScreen.heap_mb();
    line(
        "a tie, first picture of its end: %s",
        times(TIE_EDITS, i -> turn(m, "gap_mm", gap(i)), 300));
    m.solving().settle(60_000);
    OnScreen.run(() -> m.steps().choose("score the fold"));
    String depth = times(DEPTH_EDITS, i -> turn(m, "depth_fraction", 0.4 + 0.01 * (i + 1)), 3000);
    line("a depth, first picture of its end: %s", depth);
    m.solving().settle(60_000);
    line("heap, MB: %.0f before, %.0f after these", heap, OnScreen.heap_mb());
  }

  private static double gap(int i) {
    return 5.5 + 0.05 * (i % 10 + 1);
  }

  private Models models() {
    return window.orElseThrow().models();
  }

  private interface Edit {
    double ms(int i) throws InterruptedException;
  }

  private String times(int count, Edit edit, long pause_ms) throws InterruptedException {
    double[] ms = new double[count];
    List.of(solved_ms, rested_ms, off_mm).forEach(List::clear);
    long cpu = OnScreen.cpu_ms();
    long busy = 0;
    for (int i = 0; i < count; i++) {
      long from = OnScreen.cpu_ms();
      ms[i] = edit.ms(i);
      busy += OnScreen.cpu_ms() - from;
      Thread.sleep(pause_ms);
    }
    Arrays.sort(ms);
    return String.format(
        Locale.ROOT,
        "median %.0f ms, 90 %% %.0f ms, of %d%s; processor %d ms each, %d ms with what follows",
        ms[count / 2],
        ms[count * 9 / 10],
        count,
        solved_ms.isEmpty() ? "" : rest(),
        busy / count,
        (OnScreen.cpu_ms() - cpu) / count);
  }

  private String rest() {
    return String.format(
        Locale.ROOT,
        " (%d of them foreseen, at most %.3f mm from the rest; solved after %.0f ms, at rest on the screen after %.0f ms)",
        off_mm.size(),
        off_mm.stream().mapToDouble(d -> d).max().orElse(0),
        median(solved_ms),
        median(rested_ms));
  }

  private static double median(List<Double> values) {
    double[] sorted = values.stream().mapToDouble(d -> d).sorted().toArray();
    return sorted[sorted.length / 2];
  }

  /** Milliseconds from turning a dose until a frame of the ear under it has been drawn. */
  private double turn(Models m, String key, double value) throws InterruptedException {
    long start = System.nanoTime();
    List<EarSurface> ahead = new ArrayList<>();
    ChangeListener<Optional<Rehearsed>> foreseen =
        (o, was, now) -> now.ifPresent(r -> ahead.add(r.tied().surface()));
    ChangeListener<Optional<Rehearsed>> solved =
        (o, was, now) -> {
          if (solved_ms.size() == rested_ms.size()) {
            solved_ms.add(since_ms(start));
            ahead.forEach(s -> off_mm.add(apart_mm(s, now.orElseThrow().tied().surface())));
          }
        };
    OnScreen.run(
        () -> {
          m.steps().turn(key, value);
          m.steps().endTurn();
          m.showing().result().addListener(solved);
          m.solving().foreseen().addListener(foreseen);
        });
    OnScreen.drawn(() -> m.showing().seen().get().filter(s -> present(s.result())).isPresent());
    double ms = since_ms(start);
    if (!ahead.isEmpty()) {
      until(this::present);
    }
    rested_ms.add(since_ms(start));
    OnScreen.run(
        () -> {
          m.showing().result().removeListener(solved);
          m.solving().foreseen().removeListener(foreseen);
        });
    return ms;
  }

  /** How far the farthest vertex of a surface is from that of another. */
  private static double apart_mm(EarSurface one, EarSurface other) {
    float[] p = one.points();
    float[] q = other.points();
    double farthest = 0;
    for (int i = 0; i < p.length; i += 3) {
      double across = Math.hypot(p[i] - q[i], p[i + 1] - q[i + 1]);
      farthest = Math.max(farthest, Math.hypot(across, p[i + 2] - q[i + 2]));
    }
    return farthest;
  }

  private boolean present(Rehearsed r) {
    return r.ear().equals(models().desk().document().get().ear());
  }

  private static double since_ms(long start_ns) {
    return (System.nanoTime() - start_ns) / 1e6;
  }

  /** Milliseconds until the views have been given a changed gap; frames are not waited for. */
  private double shown(Models m, double gap) throws InterruptedException {
    long start = System.nanoTime();
    OnScreen.run(() -> m.steps().turn("gap_mm", gap));
    boolean[] there = new boolean[1];
    while (!there[0]) {
      OnScreen.run(
          () ->
              there[0] =
                  m.showing()
                      .result()
                      .get()
                      .filter(r -> r.ear().equals(m.desk().document().get().ear()))
                      .isPresent());
    }
    return (System.nanoTime() - start) / 1e6;
  }

  private void until(Predicate<Rehearsed> there) throws InterruptedException {
    Models m = models();
    OnScreen.drawn(() -> m.showing().result().get().filter(there).isPresent());
  }

  private Window standIn(Path folder) {
    Beginning begun = new Beginning(new StandInRehearser());
    return new Window(stage.orElseThrow(), folder, begun, StandInRehearser::new);
  }

  private void standIn() throws InterruptedException, IOException {
    Path folder = OwnFolder.make();
    OnScreen.run(() -> window.orElseThrow().close());
    OnScreen.run(() -> open(standIn(folder)));
    Models m = models();
    m.solving().settle(20_000);
    int part = STAND_IN_EDITS / 4;
    for (int k = 0; k < 4; k++) {
      double before = OnScreen.heap_mb();
      String t = times(part, i -> shown(m, gap(i)), 0);
      line(
          "with a stand-in for the solver: %s; heap %.1f to %.1f MB",
          t, before, OnScreen.heap_mb());
    }
  }

  @Override
  public void stop() {
    window.ifPresent(Window::close);
  }

  /** Starts the run with the switches of the program. */
  public static final class Main {
    private Main() {}

    /** The file for the figures. */
    public static void main(String[] arguments) {
      DrawingSwitches.set();
      Beginning.ofProgram();
      Application.launch(ScreenSpeed.class, arguments);
    }
  }
}
