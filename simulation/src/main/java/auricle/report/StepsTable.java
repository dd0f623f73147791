package auricle.report;

import auricle.measurement.Figure;
import auricle.plan.Operation;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.StepResult;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The steps as CSV: a row a step, the ear before the plan as step 0; every measurement, and its
 * change in the step.
 */
final class StepsTable {
  private StepsTable() {}

  /** The file. */
  static String write(List<RehearsalResult> ears) {
    CsvText csv = new CsvText(columns());
    for (RehearsalResult ear : ears) {
      for (int i = 0; i < ear.steps().size(); i++) {
        csv.row(row(ear, i));
      }
    }
    return csv.toString();
  }

  private static List<String> columns() {
    List<String> columns =
        new ArrayList<>(
            List.of("side", "step", "label", "operation", "converged", "outcome", "iterations"));
    columns.add("residual_n");
    Arrays.stream(Figure.values()).map(Figure::key).forEach(columns::add);
    Arrays.stream(Figure.values()).map(f -> "change_in_" + f.key()).forEach(columns::add);
    columns.addAll(
        List.of("largest_strain", "place_of_strain", "largest_stress_mpa", "place_of_stress"));
    return columns;
  }

  private static List<Object> row(RehearsalResult ear, int i) {
    StepResult step = ear.steps().get(i);
    List<Object> row = new ArrayList<>();
    row.add(EarNames.key(ear));
    row.add(i);
    row.add(step.label());
    row.add(step.operation().map(Operation::kind).orElse(""));
    row.add(step.outcome().converged());
    row.add(step.outcome().words());
    row.add(step.outcome().iterations());
    row.add(step.outcome().residual_n());
    for (Figure figure : Figure.values()) {
      row.add(figure.of(step.measures()));
    }
    for (Figure figure : Figure.values()) {
      double earlier = i == 0 ? Double.NaN : figure.of(ear.steps().get(i - 1).measures());
      row.add(figure.of(step.measures()) - earlier);
    }
    row.add(step.extremes().strain().value());
    row.add(step.extremes().strain().words());
    row.add(step.extremes().stress_mpa().value());
    row.add(step.extremes().stress_mpa().words());
    return row;
  }
}
