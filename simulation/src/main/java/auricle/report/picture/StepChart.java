package auricle.report.picture;

import auricle.anatomy.Level;
import auricle.measurement.Figure;
import auricle.plan.Range;
import auricle.plan.Target;
import auricle.report.drawing.Ink;
import auricle.report.drawing.Page;
import auricle.report.drawing.Pen;
import auricle.report.drawing.Style;
import java.util.List;

/** What each step of the plan did to every third: a row a step, a column a level. */
public final class StepChart {
  private static final double NAMES = 62;
  private static final double LOWEST_ROW = 8;
  private static final double HIGHEST_ROW = 13;
  private static final double OTHERS = 24;
  private static final double BAR_COLUMN = 36;
  private static final double NUMBER_COLUMN = 22;
  private static final Style HEAD = Sheet.TEXT.inBold().centred();
  private static final List<Figure> NUMBERS =
      List.of(Figure.FOLD_ANGLE_UPPER, Figure.FOLD_ANGLE_MIDDLE, Figure.HELICAL_SHOW_UPPER);

  private final Page page;
  private final Target target;
  private final List<StepRow> rows;
  private final double largest;
  private final double row;
  private double y = Sheet.TOP + 6;

  private StepChart(Caption caption, Target target, List<StepRow> rows) {
    double free = Sheet.HEIGHT - Sheet.TOP - Sheet.FOOT - OTHERS;
    this.row = Math.max(LOWEST_ROW, Math.min(HIGHEST_ROW, free / (rows.size() + 2)));
    double needed = Sheet.TOP + OTHERS + row * (rows.size() + 2) + Sheet.FOOT;
    double height = Math.max(Sheet.HEIGHT, needed);
    this.page = Sheet.of("What each step did to every third", caption, height);
    this.target = target;
    this.rows = List.copyOf(rows);
    this.largest = largest(rows);
  }

  /**
   * The page; it grows with the number of steps.
   *
   * @param rows the state before, then the states after each step
   */
  public static Page draw(Caption caption, Target target, List<StepRow> rows) {
    StepChart chart = new StepChart(caption, target, rows);
    chart.draw();
    return chart.page;
  }

  private static double largest(List<StepRow> rows) {
    double largest = 1;
    for (int i = 1; i < rows.size(); i++) {
      for (Level level : Level.values()) {
        double change = Math.abs(change(rows, i, LevelFigures.distance(level)));
        largest = Double.isFinite(change) ? Math.max(largest, change) : largest;
      }
    }
    return largest;
  }

  private static double change(List<StepRow> rows, int i, Figure figure) {
    return figure.of(rows.get(i).measures()) - figure.of(rows.get(i - 1).measures());
  }

  private void draw() {
    head();
    values("Before", rows.get(0), Sheet.TEXT.in(Ink.GREY));
    for (int i = 1; i < rows.size(); i++) {
      step(i);
    }
    rule();
    StepRow last = rows.get(rows.size() - 1);
    values("After", last, Sheet.TEXT.inBold().in(Ink.BLUE));
    targets();
    y += 3;
    String key = "Bars: change of the distance from the mastoid plane in this step, mm; ";
    page.label(
        key + "− towards the head, + away from it.", Sheet.MARGIN, y, Sheet.SMALL.in(Ink.GREY));
  }

  private double middle(Level level) {
    return Sheet.MARGIN + NAMES + (level.ordinal() + 0.5) * BAR_COLUMN;
  }

  private double middle(int number) {
    return Sheet.MARGIN + NAMES + 4 * BAR_COLUMN + (number + 0.5) * NUMBER_COLUMN;
  }

  private void head() {
    for (Level level : Level.values()) {
      page.label(LevelFigures.name(level), middle(level), y, HEAD);
      String what = level == Level.LOBULE ? "lobule to mastoid, mm" : "helix to mastoid, mm";
      page.label(what, middle(level), y + 4, Sheet.SMALL.in(Ink.GREY).centred());
    }
    String[] names = {"Upper", "Middle", "Upper"};
    String[] whats = {"fold angle, deg", "fold angle, deg", "helix shows, mm"};
    for (int i = 0; i < NUMBERS.size(); i++) {
      page.label(names[i], middle(i), y, HEAD);
      page.label(whats[i], middle(i), y + 4, Sheet.SMALL.in(Ink.GREY).centred());
    }
    y += 6.5;
    rule();
  }

  private void rule() {
    page.line(Sheet.MARGIN, y, Sheet.WIDTH - Sheet.MARGIN, y, new Pen(Ink.GREY, 0.25));
  }

  private void values(String name, StepRow state, Style style) {
    y += row;
    page.label(name, Sheet.MARGIN, y - row / 2 + 1.2, Sheet.TEXT.inBold());
    for (Level level : Level.values()) {
      double value = LevelFigures.distance(level).of(state.measures());
      page.label(Words.number(value), middle(level), y - row / 2 + 1.2, style.centred());
    }
    for (int i = 0; i < NUMBERS.size(); i++) {
      page.label(
          Words.number(NUMBERS.get(i).of(state.measures())),
          middle(i),
          y - row / 2 + 1.2,
          style.centred());
    }
  }

  private void step(int i) {
    StepRow state = rows.get(i);
    double top = y;
    y += row;
    if (i % 2 == 1) {
      page.box(Sheet.MARGIN, top, Sheet.WIDTH - Sheet.MARGIN, y, new Ink(243, 243, 243, 1));
    }
    name(i + "  " + state.label(), state.converged());
    for (Level level : Level.values()) {
      bar(middle(level), top, change(rows, i, LevelFigures.distance(level)));
    }
    for (int n = 0; n < NUMBERS.size(); n++) {
      String text = Words.change(change(rows, i, NUMBERS.get(n)));
      page.label(text, middle(n), y - row / 2 + 1.2, Sheet.TEXT.centred());
    }
  }

  private void name(String name, boolean converged) {
    double base = y - row / 2 + (converged ? 1.2 : -0.3);
    page.label(Words.fitted(name, Sheet.TEXT, NAMES - 4), Sheet.MARGIN + 1, base, Sheet.TEXT);
    if (!converged) {
      Style style = Sheet.SMALL.inBold().in(Ink.VERMILION);
      page.label("not in equilibrium", Sheet.MARGIN + 5.5, base + 3.3, style);
    }
  }

  private void bar(double zero, double top, double change) {
    page.line(zero, top, zero, top + row, new Pen(Ink.GREY, 0.2));
    if (!Double.isFinite(change)) {
      return;
    }
    double half = BAR_COLUMN / 2 - 11;
    double end = zero + half * change / largest;
    Ink ink = change < 0 ? Ink.BLUE : Ink.VERMILION;
    page.box(zero, top + row / 2 - 2.4, end, top + row / 2 + 2.4, ink.withOpacity(0.75));
    boolean towards = change < 0 || Words.change(change).equals("0.0");
    Style style = towards ? Sheet.TEXT.ending() : Sheet.TEXT;
    page.label(Words.change(change), towards ? end - 1.2 : end + 1.2, y - row / 2 + 1.2, style);
  }

  private void targets() {
    y += row;
    page.label("Target", Sheet.MARGIN, y - row / 2 + 1.2, Sheet.TEXT.inBold());
    Style style = Sheet.TEXT.in(Ink.GREEN).centred();
    for (Level level : Level.values()) {
      Range range = target.helixMastoid_mm().get(level);
      if (range != null) {
        page.label(Words.range(range.low(), range.high()), middle(level), y - row / 2 + 1.2, style);
      }
    }
    List<Range> angles =
        List.of(target.foldAngleUpper_deg(), target.foldAngleMiddle_deg(), target.helicalShow_mm());
    for (int i = 0; i < angles.size(); i++) {
      Range range = angles.get(i);
      page.label(Words.range(range.low(), range.high()), middle(i), y - row / 2 + 1.2, style);
    }
  }
}
