package auricle.report;

import auricle.material.UsedRow;
import auricle.measurement.Figure;
import auricle.rehearsal.Provenance;
import auricle.rehearsal.Reaction;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.StepResult;
import auricle.scenario.ExpectationResult;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The whole rehearsal as JSON, by the schema {@code auricle/report/rehearsal-1.schema.json}. It
 * holds no time and no path, so the same input gives the same bytes. What belongs to an ear stands
 * at the top if there is one ear, and under {@code ears} if there are two.
 */
public final class RehearsalJson {
  private final JsonText json;
  private final RehearsalReport report;
  private final StepJson steps;
  private final TimelineJson time;

  private RehearsalJson(JsonText json, RehearsalReport report) {
    this.json = json;
    this.report = report;
    this.steps = new StepJson(json);
    this.time = new TimelineJson(json);
  }

  /** The file. */
  public static String write(RehearsalReport report) {
    return JsonText.of(json -> new RehearsalJson(json, report).all());
  }

  private void all() {
    json.text("format", "auricle-rehearsal/1");
    json.text("use", UseNotice.TEXT);
    json.text("title", report.title());
    json.truth("converged", report.converged());
    json.truth("expectations_met", report.expectationsMet());
    json.object("inputs", o -> inputs());
    json.objects("expectations", report.expectations(), this::expectation);
    if (report.ofPair()) {
      new AssessmentJson(json).sides(report.sides());
      json.objects("ears", report.ears(), this::ear);
    } else {
      report.ears().forEach(this::ear);
    }
  }

  private void inputs() {
    json.text("program_version", report.version());
    json.text("scenario_file", report.scenarioFile());
    json.text("scenario_sha256", report.scenarioSha256());
  }

  private void expectation(ExpectationResult expectation) {
    json.text("side", expectation.side().name().toLowerCase(Locale.ROOT));
    json.text("what", expectation.what());
    json.text("expected", expectation.expected());
    json.number("found", expectation.found());
    json.text("found_words", expectation.foundWords());
    json.text("unit", expectation.unit());
    json.truth("met", expectation.met());
    json.text("because", expectation.because());
  }

  private void ear(RehearsalResult ear) {
    StepResult first = ear.before();
    StepResult last = ear.after();
    json.text("side", EarNames.key(ear));
    json.truth("ear_converged", ear.converged());
    json.object("basis", o -> basis(ear.provenance(), ear.materialRows()));
    json.object(
        "measures",
        o -> {
          json.object("before", before -> steps.measures(first.measures()));
          json.object("after", after -> steps.measures(last.measures()));
          ear.timeline().ifPresent(t -> json.object("at", at -> time.measuresAt(t)));
        });
    json.object("before", o -> steps.outcome(first.outcome()));
    steps.steps(ear.steps());
    steps.threads(last.threads());
    if (!ear.reactions().isEmpty()) {
      json.objects("reactions", ear.reactions(), this::reaction);
    }
    ear.timeline().ifPresent(t -> json.object("timeline", o -> time.write(t)));
    new AssessmentJson(json).write(report.assessment(ear));
  }

  private void reaction(Reaction reaction) {
    json.text("operation", reaction.operation());
    json.text("dose", reaction.dose());
    json.text("unit", reaction.unit());
    json.object("rates", o -> rates(reaction.rates()));
    if (!reaction.without().isEmpty()) {
      json.text("without", reaction.without());
    }
  }

  private void rates(Map<Figure, Double> rates) {
    for (Figure figure : Figure.values()) {
      json.number(figure.key(), rates.getOrDefault(figure, Double.NaN));
    }
  }

  private void basis(Provenance from, List<UsedRow> rows) {
    json.text("mesh", from.mesh());
    json.count("vertices", from.vertices());
    json.count("triangles", from.triangles());
    json.count("unknowns", from.unknowns());
    json.count("iterations", from.iterations());
    json.number("worst_residual_n", from.worstResidual_n());
    json.text("java", from.java());
    json.texts("conventions", from.conventions());
    json.objects("material_rows", rows, this::row);
  }

  private void row(UsedRow used) {
    json.text("key", used.row().key());
    json.number("value", used.value());
    json.text("unit", used.row().quantity().unit());
    json.text("origin", used.origin().words());
    json.text("source", used.row().source());
    json.text("locator", used.row().locator());
    json.text("confidence", used.row().confidence().key());
  }
}
