package auricle.viewer.viewmodel;

import auricle.measurement.Figure;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import java.util.ArrayList;
import java.util.List;

/** What each step did to every third: the change of each figure from the step before. */
public final class ChangeTable {
  /** Figures that are told, in order. */
  public static final List<Figure> FIGURES =
      List.of(
          Figure.HELIX_MASTOID_UPPER,
          Figure.HELIX_MASTOID_MIDDLE,
          Figure.HELIX_MASTOID_LOWER,
          Figure.LOBULE_MASTOID,
          Figure.FOLD_ANGLE_UPPER,
          Figure.HELICAL_SHOW_UPPER);

  private ChangeTable() {}

  /**
   * One step.
   *
   * @param label of the step
   * @param changes one a figure, in its unit
   * @param converged whether both ends are states of rest
   */
  public record Row(String label, List<Double> changes, boolean converged) {
    /** Keeps its own copy. */
    public Row {
      changes = List.copyOf(changes);
    }
  }

  /** The rows of a result, one a step. */
  public static List<Row> rows(Rehearsed result) {
    List<Row> rows = new ArrayList<>();
    for (int i = 1; i < result.steps().size(); i++) {
      Moment before = result.steps().get(i - 1);
      Moment after = result.steps().get(i);
      List<Double> changes =
          FIGURES.stream().map(f -> f.of(after.measures()) - f.of(before.measures())).toList();
      rows.add(
          new Row(
              after.label(), changes, before.outcome().converged() && after.outcome().converged()));
    }
    return rows;
  }
}
