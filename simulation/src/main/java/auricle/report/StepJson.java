package auricle.report;

import auricle.measurement.Figure;
import auricle.measurement.HelicalShow;
import auricle.measurement.Measures;
import auricle.measurement.NamedValue;
import auricle.plan.Dose;
import auricle.plan.Operation;
import auricle.rehearsal.Extreme;
import auricle.rehearsal.StepOutcome;
import auricle.rehearsal.StepResult;
import auricle.rehearsal.ThreadState;
import java.util.List;

/** Steps, measurements and threads as JSON. */
final class StepJson {
  private final JsonText json;

  StepJson(JsonText json) {
    this.json = json;
  }

  /** All measurements of a state. */
  void measures(Measures measures) {
    for (NamedValue figure : measures.figures()) {
      json.number(figure.key(), figure.value());
    }
    json.objects("helical_show_along_height", measures.showAlongHeight(), this::show);
  }

  private void show(HelicalShow show) {
    json.number("level_percent", show.level_percent());
    json.number("show_mm", show.show_mm());
  }

  /** The steps of the plan; the state before is the first of the list, and none itself. */
  void steps(List<StepResult> steps) {
    json.objects(
        "steps",
        steps.subList(Math.min(1, steps.size()), steps.size()),
        step -> step(steps, steps.indexOf(step)));
  }

  private void step(List<StepResult> steps, int number) {
    StepResult step = steps.get(number);
    json.count("step", number);
    json.text("label", step.label());
    step.operation().ifPresent(o -> json.object("operation", inner -> operation(o)));
    outcome(step.outcome());
    json.object("measures", inner -> measures(step.measures()));
    json.object("change", inner -> changes(steps.get(number - 1), step));
    threads(step.threads());
    json.object("largest_strain", inner -> extreme("strain", step.extremes().strain()));
    json.object("largest_stress", inner -> extreme("stress_mpa", step.extremes().stress_mpa()));
  }

  private void operation(Operation operation) {
    json.text("kind", operation.kind());
    json.text("words", operation.words());
    json.object(
        "doses",
        inner -> {
          for (Dose dose : operation.doses()) {
            json.number(dose.key(), dose.value());
          }
        });
  }

  /** How a step ended. */
  void outcome(StepOutcome outcome) {
    json.truth("converged", outcome.converged());
    json.text("outcome", outcome.words());
    json.count("iterations", outcome.iterations());
    json.number("residual_n", outcome.residual_n());
    json.number("tolerance_n", outcome.tolerance_n());
    json.texts("events", outcome.events());
  }

  private void changes(StepResult before, StepResult after) {
    for (Figure figure : Figure.values()) {
      json.number(figure.key(), figure.of(after.measures()) - figure.of(before.measures()));
    }
  }

  /** The threads that are in. */
  void threads(List<ThreadState> threads) {
    json.objects("threads", threads, this::thread);
  }

  private void thread(ThreadState thread) {
    json.text("name", thread.name());
    json.truth("suture", thread.suture());
    json.number("tension_n", thread.tension_n());
    json.truth("slack", thread.slack());
    json.number("length_mm", thread.length_mm());
    json.number("knot_pull_n", thread.knotPull_n());
    json.number("share_of_knot_pull", thread.shareOfKnotPull());
    json.number("tear_through_n", thread.tearThrough_n());
    json.number("share_of_tear_through", thread.shareOfTearThrough());
  }

  private void extreme(String key, Extreme extreme) {
    json.number(key, extreme.value());
    json.text("region", extreme.region());
    json.number("level_percent", extreme.heightPercent());
    json.text("place", extreme.words());
  }
}
