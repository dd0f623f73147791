package auricle.report;

import auricle.assessment.Balance;
import auricle.measurement.Figure;
import auricle.plan.Range;
import auricle.rehearsal.Reaction;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.StepResult;
import auricle.rehearsal.ThreadState;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** One ear at the terminal: before, after and target, changes by step, threads. */
final class RehearsalTable {
  private static final Map<Figure, String> SHORT =
      Map.of(
          Figure.HELIX_MASTOID_UPPER, "upper",
          Figure.HELIX_MASTOID_MIDDLE, "middle",
          Figure.HELIX_MASTOID_LOWER, "lower",
          Figure.LOBULE_MASTOID, "lobule",
          Figure.FOLD_ANGLE_UPPER, "fold upper",
          Figure.FOLD_ANGLE_MIDDLE, "fold middle",
          Figure.HELICAL_SHOW_UPPER, "helix shows");

  private final RehearsalResult ear;
  private final StringBuilder text = new StringBuilder();

  private RehearsalTable(RehearsalResult ear) {
    this.ear = ear;
  }

  /** The lines. */
  static String write(RehearsalResult ear) {
    RehearsalTable table = new RehearsalTable(ear);
    table.figures();
    table.steps();
    table.threads();
    table.reactions();
    return table.text.toString();
  }

  private StepResult first() {
    return ear.before();
  }

  private StepResult last() {
    return ear.after();
  }

  private void figures() {
    TextTable table = new TextTable("lrrrrl");
    table.row("", "before", "after", "change", "target");
    Map<Figure, Range> targets = Targets.of(ear.ear().target());
    for (Figure figure : Targets.SHOWN) {
      double before = figure.of(first().measures());
      double after = figure.of(last().measures());
      Range target = targets.get(figure);
      table.row(
          figure.label() + ", " + figure.unit(),
          TextTable.number(before, 1),
          TextTable.number(after, 1),
          TextTable.change(after - before, 1),
          target == null ? "" : TextTable.range(target.low(), target.high()),
          target == null ? "" : new Balance(figure, before, after, target).words());
    }
    text.append(table.text()).append('\n');
  }

  private void steps() {
    TextTable table = new TextTable("rlrrrrrrr");
    List<Figure> figures = Targets.SHOWN.stream().filter(SHORT::containsKey).toList();
    table.row(heads(figures));
    for (int i = 1; i < ear.steps().size(); i++) {
      table.row(changes(i, figures));
    }
    if (!table.isBare()) {
      text.append("Changes by step (mm from the mastoid plane, deg; - towards the head)\n");
      text.append(table.text()).append('\n');
    }
  }

  private static String[] heads(List<Figure> figures) {
    String[] cells = new String[figures.size() + 2];
    cells[0] = "";
    cells[1] = "";
    for (int f = 0; f < figures.size(); f++) {
      cells[f + 2] = SHORT.getOrDefault(figures.get(f), "");
    }
    return cells;
  }

  private String[] changes(int i, List<Figure> figures) {
    StepResult step = ear.steps().get(i);
    String[] cells = new String[figures.size() + 2];
    cells[0] = String.valueOf(i);
    cells[1] = step.label() + (step.outcome().converged() ? "" : "  NOT IN EQUILIBRIUM");
    for (int f = 0; f < figures.size(); f++) {
      double earlier = figures.get(f).of(ear.steps().get(i - 1).measures());
      cells[f + 2] = TextTable.change(figures.get(f).of(step.measures()) - earlier, 1);
    }
    return cells;
  }

  private void threads() {
    TextTable table = new TextTable("lrrr");
    table.row("", "tension", "of knot-pull", "of tear-through");
    for (ThreadState thread : ThreadState.gathered(last().threads())) {
      table.row(
          thread.name(),
          thread.slack() ? "slack" : TextTable.number(thread.tension_n(), 2) + " N",
          percent(thread.shareOfKnotPull(), thread.knotPull_n()),
          percent(thread.shareOfTearThrough(), thread.tearThrough_n()));
    }
    if (!table.isBare()) {
      boolean others = last().threads().stream().anyMatch(t -> !Double.isFinite(t.knotPull_n()));
      text.append(others ? "Threads, and what else pulls\n" : "Threads\n");
      text.append(table.text()).append('\n');
    }
  }

  private void reactions() {
    TextTable table = new TextTable("llrrrrrrr");
    List<Figure> figures = Targets.SHOWN.stream().filter(SHORT::containsKey).toList();
    table.row(heads(figures));
    String before = "";
    for (Reaction reaction : ear.reactions()) {
      String[] cells = new String[figures.size() + 2];
      cells[0] = reaction.operation().equals(before) ? "" : reaction.operation();
      cells[1] = reaction.dose();
      for (int f = 0; f < figures.size(); f++) {
        cells[f + 2] =
            TextTable.change(reaction.rates().getOrDefault(figures.get(f), Double.NaN), 2);
      }
      before = reaction.operation();
      table.row(cells);
    }
    if (!table.isBare()) {
      text.append(
          "What a little more of each dose would do in the end (mm or deg for 1 of its unit)\n");
      text.append(table.text()).append('\n');
      ear.reactions().stream().filter(r -> !r.without().isEmpty()).forEach(this::withoutRate);
    }
  }

  private void withoutRate(Reaction reaction) {
    text.append(
        "%s, %s: %s%n".formatted(reaction.operation(), reaction.dose(), reaction.without()));
  }

  private static String percent(double share, double whole_n) {
    if (!Double.isFinite(whole_n)) {
      return "-";
    }
    return String.format(Locale.ROOT, "%.0f %% of %.1f N", 100 * share, whole_n);
  }
}
