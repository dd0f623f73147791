package auricle.report;

import auricle.healing.MomentResult;
import auricle.rehearsal.DeformedEar;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.StepResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A shape of a rehearsal that is written to a file.
 *
 * @param name of its files, without which ear it is: step_00 is the ear before the plan, year_01
 *     the first moment after the ear was tied
 * @param shape with its fields
 * @param note what it shows and whether it is at rest, for the head of the file
 */
record NamedShape(String name, DeformedEar shape, String note) {
  /** The ear after every step, then at the moments of the year. */
  static List<NamedShape> of(RehearsalReport report, RehearsalResult ear) {
    String title = EarNames.words(ear) + ", " + report.title();
    List<NamedShape> shapes = new ArrayList<>();
    for (StepResult step : ear.steps()) {
      String note = note(title, step.label(), state(step));
      shapes.add(new NamedShape(name("step", shapes.size()), step.shape(), note));
    }
    // The first moment is the end of the plan, which is there already.
    for (int i = 1; i < ear.healed().size(); i++) {
      MomentResult moment = ear.timeline().orElseThrow().moments().get(i);
      String note = note(title, moment.label(), "in equilibrium");
      shapes.add(new NamedShape(name("year", i), ear.healed().get(i), note));
    }
    return shapes;
  }

  private static String name(String kind, int number) {
    return String.format(Locale.ROOT, "%s_%02d", kind, number);
  }

  private static String state(StepResult step) {
    return step.outcome().converged()
        ? "in equilibrium"
        : "NOT IN EQUILIBRIUM: " + step.outcome().words();
  }

  private static String note(String title, String when, String state) {
    return "%s; %s; %s. %s".formatted(title, when, state, UseNotice.TEXT);
  }
}
