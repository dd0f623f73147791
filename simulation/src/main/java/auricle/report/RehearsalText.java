package auricle.report;

import auricle.assessment.Assessment;
import auricle.assessment.Caution;
import auricle.assessment.Fault;
import auricle.assessment.SideDifference;
import auricle.rehearsal.RehearsalResult;
import auricle.scenario.ExpectationResult;
import java.util.Locale;

/** A rehearsal for the terminal, to be read in ten seconds. */
public final class RehearsalText {
  private final RehearsalReport report;
  private final StringBuilder text = new StringBuilder();
  private final LimitNotes notes = new LimitNotes();

  private RehearsalText(RehearsalReport report) {
    this.report = report;
  }

  /** The lines. */
  public static String write(RehearsalReport report) {
    RehearsalText text = new RehearsalText(report);
    report.ears().forEach(text::ear);
    text.sides();
    text.expectations();
    text.text.append(text.notes.text());
    text.text.append(UseNotice.TEXT).append('\n');
    return text.text.toString();
  }

  private void ear(RehearsalResult ear) {
    text.append('\n').append(EarNames.words(ear)).append(": ").append(report.title());
    text.append(
        String.format(
            Locale.ROOT,
            " (%s mesh, %d vertices)%n",
            ear.provenance().mesh().toLowerCase(Locale.ROOT),
            ear.provenance().vertices()));
    failures(ear);
    text.append('\n');
    Assessment assessment = report.assessment(ear);
    faults(assessment);
    text.append(RehearsalTable.write(ear));
    cautions(assessment);
    text.append(EventText.write(ear));
    ear.timeline().map(CourseText::write).ifPresent(text::append);
  }

  private void faults(Assessment assessment) {
    if (assessment.faults().isEmpty()) {
      text.append("At fault before: nothing by the limits of this program\n\n");
      return;
    }
    text.append("At fault before\n");
    for (Fault fault : assessment.faults()) {
      text.append(
          "  %s: %s (%s %s, limit %s %s)%n"
              .formatted(
                  fault.level().key(),
                  fault.words(),
                  TextTable.number(fault.measured(), 1),
                  fault.figure().unit(),
                  TextTable.number(fault.limit().value(), 1),
                  notes.mark(fault.limit())));
    }
    text.append('\n');
  }

  private void cautions(Assessment assessment) {
    if (!assessment.cautions().isEmpty()) {
      text.append("Cautions\n");
      assessment.cautions().forEach(this::caution);
      text.append('\n');
    }
  }

  private void caution(Caution caution) {
    String mark = notes.mark(caution.limit());
    text.append(Lines.of("  !", 4, caution.words() + " " + mark));
  }

  private void failures(RehearsalResult ear) {
    ear.steps().stream()
        .filter(step -> !step.outcome().converged())
        .forEach(
            step ->
                text.append("NOT IN EQUILIBRIUM, do not use these figures: ")
                    .append(step.label())
                    .append(": ")
                    .append(step.outcome().words())
                    .append('\n'));
  }

  private void sides() {
    if (report.sides().isEmpty()) {
      return;
    }
    text.append("Right against left\n");
    TextTable table = new TextTable("lrrrl");
    table.row("", "right", "left", "difference");
    for (SideDifference side : report.sides()) {
      String limit = TextTable.number(side.limit().value(), 1) + " " + side.figure().unit();
      table.row(
          side.figure().label() + ", " + side.figure().unit(),
          TextTable.number(side.right(), 1),
          TextTable.number(side.left(), 1),
          TextTable.change(side.difference(), 1),
          side.within() ? "within " + limit : "MORE THAN " + limit);
    }
    text.append(table.text()).append('\n');
  }

  private void expectations() {
    if (report.expectations().isEmpty()) {
      return;
    }
    long met = report.expectations().stream().filter(ExpectationResult::met).count();
    text.append(
        "Expected by the scenario: %d of %d found%n".formatted(met, report.expectations().size()));
    report.expectations().forEach(this::expectation);
    text.append('\n');
  }

  private void expectation(ExpectationResult e) {
    text.append(e.met() ? "  yes  " : "  NO   ");
    if (report.ofPair()) {
      text.append(e.side().name().toLowerCase(Locale.ROOT)).append(": ");
    }
    String found = (e.foundWords() + " " + e.unit()).strip();
    text.append(e.what()).append(": ").append(found);
    text.append(e.expected().equals(found) ? "" : " (" + e.expected() + ")");
    text.append(e.met() || e.because().isEmpty() ? "" : ", because " + e.because()).append('\n');
  }
}
