package auricle.viewer.view;

import auricle.anatomy.Level;
import auricle.rehearsal.ThreadState;
import auricle.viewer.scene.Sheet;
import auricle.viewer.scene.Sheet.Hold;
import auricle.viewer.scene.Sheet.Tone;
import auricle.viewer.task.Caution;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.viewmodel.Balance;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.PlanSteps;
import auricle.viewer.viewmodel.ShowSheet;
import auricle.viewer.viewmodel.Showing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The balance: every level before, now and after a year beside its target; threads; cautions. */
final class BalancePane extends SidePane {
  private final Showing showing;
  private final PlanSteps steps;
  private final Look look;
  private final Consumer<Level> light;
  private final BalanceTable table;
  private final VBox cautions = new VBox(6);
  private final VBox threads = new VBox(4);
  private final List<SheetCanvas> bars = new ArrayList<>();
  private final Label noThread = Texts.paragraph("No thread is tied at this moment.", "hint");
  private final SheetCanvas show;
  private List<Caution> said = List.of();

  BalancePane(Showing showing, PlanSteps steps, Look look, Consumer<Level> light) {
    super("balance");
    this.showing = showing;
    this.steps = steps;
    this.look = look;
    this.light = light;
    this.table = new BalanceTable(look, light);
    this.show = new SheetCanvas(look, 13).growing();
    cautions.getChildren().add(Texts.paragraph("None.", "hint"));
    getChildren()
        .addAll(
            table,
            Texts.label("Cautions", "sub-title"),
            cautions,
            Texts.label("Thread tension against its limit", "sub-title"),
            threads,
            Texts.label("Helix beyond antihelix, seen from the front", "sub-title"),
            show);
    showing.moment().addListener(o -> changed());
    look.textScale().addListener(o -> changed());
  }

  @Override
  void draw() {
    if (showing.result().get().isEmpty() || showing.moment().get().isEmpty()) {
      return;
    }
    Rehearsed result = showing.result().get().get();
    Moment now = showing.moment().get().get();
    table.show(Balance.rows(result, now));
    if (!result.cautions().equals(said)) {
      said = result.cautions();
      cautions();
    }
    threads(now);
    show.show((w, h, em) -> new ShowSheet(w, h, em).draw(result, now), ShowSheet.words(now));
  }

  private void cautions() {
    cautions.getChildren().clear();
    if (said.isEmpty()) {
      cautions.getChildren().add(Texts.paragraph("None.", "hint"));
    }
    for (Caution caution : said) {
      Button button = new Button(caution.words());
      button.setWrapText(true);
      button.setMaxWidth(Double.MAX_VALUE);
      button.setMinHeight(USE_PREF_SIZE);
      button.getStyleClass().add("caution");
      button.setTooltip(new javafx.scene.control.Tooltip(caution.basis()));
      button.setOnAction(e -> lightUp(caution));
      cautions.getChildren().add(button);
    }
  }

  private void lightUp(Caution caution) {
    if (!caution.operation().isEmpty()) {
      steps.choose(caution.operation());
    }
    caution.levels_percent().stream().findFirst().ifPresent(p -> light.accept(nearest(p)));
  }

  private static Level nearest(double percent) {
    return java.util.Arrays.stream(Level.values())
        .min(java.util.Comparator.comparingDouble(l -> Math.abs(l.heightPercent() - percent)))
        .orElse(Level.MIDDLE);
  }

  /** A bar for each thread; bars are kept from one moment to the next. */
  private void threads(Moment now) {
    List<ThreadState> pulling = ThreadState.gathered(now.threads());
    while (bars.size() < pulling.size()) {
      bars.add(new SheetCanvas(look, 2.2));
    }
    for (int i = 0; i < pulling.size(); i++) {
      ThreadState t = pulling.get(i);
      String words = words(t);
      bars.get(i).show((w, h, em) -> threadBar(t, words, w, em), t.name() + " " + words);
      bars.get(i).setOnMouseClicked(e -> steps.choose(t.name()));
    }
    if (pulling.isEmpty()) {
      threads.getChildren().setAll(noThread);
    } else {
      threads.getChildren().setAll(bars.subList(0, pulling.size()));
    }
  }

  private static double limit_n(ThreadState t) {
    return Math.min(t.knotPull_n(), t.tearThrough_n());
  }

  /** Skin and pads have no limit to be held against. */
  private static String words(ThreadState t) {
    return t.slack()
        ? "slack"
        : Double.isFinite(limit_n(t))
            ? String.format(Locale.ROOT, "%.2f N of %.1f N", t.tension_n(), limit_n(t))
            : String.format(Locale.ROOT, "%.2f N", t.tension_n());
  }

  private static Sheet threadBar(ThreadState t, String words, double w, double em) {
    Sheet sheet = new Sheet(w, 2.2 * em);
    sheet.words(0, 0.6 * em, t.name(), Tone.INK, 0.95, false, Hold.LEFT);
    sheet.words(w, 0.6 * em, words, Tone.FAINT, 0.95, false, Hold.RIGHT);
    if (Double.isFinite(limit_n(t))) {
      double share = Math.max(0, Math.min(1, t.tension_n() / limit_n(t)));
      Tone tone = share > 0.5 ? Tone.CAUTION : Tone.NOW;
      sheet.box(0, 1.4 * em, w, 0.4 * em, Tone.GRID, 0.7);
      sheet.box(0, 1.4 * em, Math.max(2, w * share), 0.4 * em, tone, 1);
    }
    return sheet;
  }
}
