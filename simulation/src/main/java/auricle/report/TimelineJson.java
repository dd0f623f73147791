package auricle.report;

import auricle.healing.Bands;
import auricle.healing.MomentResult;
import auricle.healing.ThreadAtMoment;
import auricle.healing.Timeline;

/** The time after the operation as JSON. */
final class TimelineJson {
  private final JsonText json;
  private final StepJson steps;

  TimelineJson(JsonText json) {
    this.json = json;
    this.steps = new StepJson(json);
  }

  /** Key of a time: tied, 1_week, 12_months. */
  static String key(MomentResult moment) {
    return moment.label().replace(' ', '_');
  }

  /** All measurements by time. */
  void measuresAt(Timeline timeline) {
    timeline.moments().forEach(m -> json.object(key(m), o -> steps.measures(m.measures())));
  }

  /** Loss, threads, release test and events by time, and the bands. */
  void write(Timeline timeline) {
    json.truth("converged", timeline.converged());
    json.text("outcome", timeline.words());
    json.count("time_steps", timeline.steps());
    json.count("rejected_steps", timeline.rejected());
    json.count("iterations", timeline.iterations());
    json.objects("moments", timeline.moments(), this::moment);
    timeline.bands().ifPresent(b -> json.object("bands", o -> bands(b)));
  }

  private void moment(MomentResult moment) {
    json.number("days", moment.days());
    json.text("label", moment.label());
    json.text("key", key(moment));
    json.object(
        "loss_share",
        o -> {
          for (auricle.anatomy.Level level : auricle.anatomy.Level.values()) {
            json.number(level.key(), moment.loss().getOrDefault(level, Double.NaN));
          }
        });
    json.objects("threads", moment.threads(), this::thread);
    moment.released().ifPresent(m -> json.object("released", o -> steps.measures(m)));
    json.texts("events", moment.events());
  }

  private void thread(ThreadAtMoment thread) {
    json.text("name", thread.name());
    json.number("tension_n", thread.tension_n());
    json.number("knot_pull_n", thread.knotPull_n());
    json.number("tear_through_n", thread.tearThrough_n());
    json.number("slip_mm", thread.slip_mm());
    json.truth("slack", thread.slack());
    json.truth("gone", thread.gone());
  }

  private void bands(Bands bands) {
    json.count("samples", bands.samples());
    json.count("seed", bands.seed());
    json.texts("failures", bands.failures());
    json.objects("figures", bands.figures(), this::band);
  }

  private void band(Bands.Band band) {
    json.number("days", band.days());
    json.text("figure", band.key());
    json.number("low_10", band.low());
    json.number("middle", band.middle());
    json.number("high_90", band.high());
  }
}
