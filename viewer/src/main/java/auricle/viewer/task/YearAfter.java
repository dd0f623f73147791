package auricle.viewer.task;

import auricle.healing.MomentResult;
import auricle.healing.ThreadAtMoment;
import auricle.healing.Timeline;
import auricle.rehearsal.DeformedEar;
import auricle.rehearsal.Position;
import auricle.rehearsal.StepOutcome;
import auricle.rehearsal.ThreadState;
import auricle.viewer.scene.EarSurface;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A timeline as moments to show. */
final class YearAfter {
  private final Surfaces surfaces;
  private final Moment tied;

  YearAfter(Surfaces surfaces, Moment tied) {
    this.surfaces = surfaces;
    this.tied = tied;
  }

  /**
   * The moments after the operation; the first of the timeline is its end and left out.
   *
   * @param shapes of the moments of the timeline
   */
  List<Moment> moments(Timeline line, List<DeformedEar> shapes) {
    List<Moment> moments = new ArrayList<>();
    for (int i = 0; i < line.moments().size(); i++) {
      if (line.moments().get(i).days() > 0) {
        moments.add(moment(line.moments().get(i), shapes.get(i)));
      }
    }
    if (!line.converged() && !moments.isEmpty()) {
      moments.set(moments.size() - 1, open(moments.get(moments.size() - 1), line.words()));
    }
    return moments;
  }

  private static Moment open(Moment m, String words) {
    StepOutcome o = m.outcome();
    StepOutcome not =
        new StepOutcome(
            false, false, words, o.iterations(), o.residual_n(), o.tolerance_n(), o.events());
    return new Moment(
        m.label(),
        m.days(),
        true,
        m.surface(),
        m.lines(),
        m.measures(),
        m.threads(),
        not,
        m.released());
  }

  private Moment moment(MomentResult m, DeformedEar shape) {
    EarSurface surface = surfaces.of(shape);
    List<ThreadState> threads = new ArrayList<>();
    for (ThreadAtMoment t : m.threads()) {
      tied.threads().stream()
          .filter(s -> s.name().equals(t.name()) && !t.gone())
          .findFirst()
          .ifPresent(s -> threads.add(thread(s, t, surface)));
    }
    StepOutcome outcome =
        new StepOutcome(true, false, "every moment of the year is at rest", 0, 0, 0, m.events());
    return new Moment(
        m.label(),
        m.days(),
        true,
        surface,
        Surfaces.lines(shape),
        m.measures(),
        threads,
        outcome,
        m.released());
  }

  private ThreadState thread(ThreadState s, ThreadAtMoment t, EarSurface now) {
    List<Position> points = s.points().stream().map(p -> moved(p, now)).toList();
    return new ThreadState(
        s.name(),
        s.suture(),
        t.tension_n(),
        t.knotPull_n(),
        t.tearThrough_n(),
        t.slack(),
        s.length_mm(),
        s.closed(),
        points);
  }

  /** A point of a thread carried along by the vertex nearest to it when it was tied. */
  private Position moved(Position p, EarSurface now) {
    float[] from = tied.surface().points();
    int nearest = nearest(p, from).orElse(0);
    float[] to = now.points();
    return new Position(
        p.lateral_mm() + to[3 * nearest] - from[3 * nearest],
        p.anterior_mm() + to[3 * nearest + 1] - from[3 * nearest + 1],
        p.superior_mm() + to[3 * nearest + 2] - from[3 * nearest + 2]);
  }

  private static Optional<Integer> nearest(Position p, float[] points) {
    Optional<Integer> nearest = Optional.empty();
    double least = Double.MAX_VALUE;
    for (int v = 0; v < points.length / 3; v++) {
      double x = points[3 * v] - p.lateral_mm();
      double y = points[3 * v + 1] - p.anterior_mm();
      double z = points[3 * v + 2] - p.superior_mm();
      double d = x * x + y * y + z * z;
      if (d < least) {
        least = d;
        nearest = Optional.of(v);
      }
    }
    return nearest;
  }
}
