package auricle.report;

import auricle.healing.Bands;
import auricle.healing.MomentResult;
import auricle.healing.Timeline;
import auricle.measurement.Figure;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.StepResult;
import auricle.report.drawing.Page;
import auricle.report.picture.Caption;
import auricle.report.picture.CourseChart;
import auricle.report.picture.CoursePoint;
import auricle.report.picture.EarStory;
import auricle.report.picture.Moment;
import auricle.report.picture.OutlinesPicture;
import auricle.report.picture.SectionsPicture;
import auricle.report.picture.StepChart;
import auricle.report.picture.StepRow;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;

/** The pictures of one ear of a report, each drawn when it is asked for. */
final class RehearsalPictures {
  private final RehearsalReport report;
  private final RehearsalResult ear;

  RehearsalPictures(RehearsalReport report, RehearsalResult ear) {
    this.report = report;
    this.ear = ear;
  }

  /** The pictures by the names of their files, without the ending. */
  Map<String, Supplier<Page>> all() {
    String suffix = EarNames.suffix(report, ear);
    EarStory story = story();
    Map<String, Supplier<Page>> pages = new TreeMap<>();
    pages.put("sections" + suffix, () -> SectionsPicture.draw(story));
    pages.put("outlines" + suffix, () -> OutlinesPicture.draw(story));
    pages.put("steps" + suffix, () -> StepChart.draw(story.caption(), ear.ear().target(), rows()));
    ear.timeline()
        .filter(t -> !t.moments().isEmpty())
        .ifPresent(t -> pages.put("timeline" + suffix, () -> course(t)));
    return pages;
  }

  private Page course(Timeline timeline) {
    List<CoursePoint> points = new ArrayList<>();
    for (MomentResult moment : timeline.moments()) {
      points.add(new CoursePoint(moment.days(), moment.measures(), spread(timeline, moment)));
    }
    String samples =
        timeline
            .bands()
            .map(b -> "10–90 % of " + (b.samples() - b.failures().size()) + " sampled tissues")
            .orElse("");
    return CourseChart.draw(story(), points, samples);
  }

  private static Map<Figure, CoursePoint.Spread> spread(Timeline timeline, MomentResult moment) {
    Map<Figure, CoursePoint.Spread> spread = new EnumMap<>(Figure.class);
    for (Bands.Band band : timeline.bands().map(Bands::figures).orElse(List.of())) {
      if (band.days() == moment.days()) {
        Figure.ofKey(band.key())
            .ifPresent(f -> spread.put(f, new CoursePoint.Spread(band.low(), band.high())));
      }
    }
    return spread;
  }

  private EarStory story() {
    StepResult first = ear.before();
    StepResult last = ear.after();
    return new EarStory(
        caption(),
        EarNames.side(ear),
        new Moment(first.shape(), first.measures()),
        new Moment(last.shape(), last.measures()),
        ear.ear().target());
  }

  private Caption caption() {
    String subject = EarNames.words(ear) + ": " + report.title();
    String failure =
        ear.steps().stream()
            .filter(s -> !s.outcome().converged())
            .findFirst()
            .map(s -> s.label() + ": " + s.outcome().words())
            .or(() -> ear.timeline().filter(t -> !t.converged()).map(Timeline::words))
            .orElse("");
    String basis =
        String.format(
            Locale.ROOT,
            "auricle %s; %s mesh, %d vertices; scenario %s, SHA-256 %.12s; figures, sources and"
                + " convergence in result.json",
            report.version(),
            ear.provenance().mesh().toLowerCase(Locale.ROOT),
            ear.provenance().vertices(),
            report.scenarioFile(),
            report.scenarioSha256());
    return new Caption(subject, failure, basis);
  }

  private List<StepRow> rows() {
    return ear.steps().stream()
        .map(s -> new StepRow(s.label(), s.measures(), s.outcome().converged()))
        .toList();
  }
}
