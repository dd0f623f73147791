package auricle.rehearsal;

import auricle.anatomy.Auricle;
import auricle.energy.MaterialPoint;
import auricle.material.ThreadRow;
import auricle.measurement.EarMeasurer;
import auricle.surgery.BodyThread;
import auricle.surgery.EarBody;
import auricle.surgery.Purpose;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads threads, extremes and shape off a body in its present state. */
final class EarView {
  /** Strain or stress, MPa, that is rounding. */
  private static final double NOTHING = 1e-12;

  private final EarBody body;
  private final EarMeasurer measurer;
  private final Auricle auricle;
  private @Nullable WallStrains strains;

  EarView(EarBody body, EarMeasurer measurer) {
    this.measurer = measurer;
    this.body = body;
    auricle = body.auricle();
  }

  private WallStrains strains() {
    if (strains == null) {
      strains = WallStrains.of(body);
    }
    return strains;
  }

  /** Threads that have been tied, slack ones too. */
  List<ThreadState> threads() {
    return body.threads().stream()
        .filter(t -> t.restLength_mm().isPresent())
        .map(this::thread)
        .toList();
  }

  private ThreadState thread(BodyThread t) {
    double[] u = body.unknowns();
    double tension = t.thread().tension(u);
    double knot = t.row().map(ThreadRow::knotPull_n).orElse(Double.POSITIVE_INFINITY);
    List<Position> points = new ArrayList<>();
    for (MaterialPoint p : t.points()) {
      points.add(position(p.position(u)));
    }
    return new ThreadState(
        t.name(),
        t.purpose() == Purpose.SUTURE,
        tension,
        knot,
        t.tearThrough_n(),
        tension < ThreadState.SLACK_N,
        t.thread().length(u),
        t.closed(),
        points);
  }

  private static Position position(double[] x) {
    return new Position(x[0], x[1], x[2]);
  }

  /**
   * Greatest strain and stress, as means over discs as wide as the wall is thick: what a shell has
   * within less than that, as at the end of a cut, is not that of the wall.
   */
  Extremes extremes() {
    PatchMean patches =
        new PatchMean(
            auricle.mesh().topology(),
            auricle.mesh().positions(),
            t -> auricle.region(t).hasCartilage());
    Greatest strain = new Greatest();
    Greatest stress = new Greatest();
    for (int t = 0; t < auricle.mesh().topology().triangleCount(); t++) {
      if (auricle.region(t).hasCartilage()) {
        patches.grow(t, patch_mm2(t));
        strain.look(t, patches.mean(strains()::strain));
        stress.look(t, patches.mean(strains()::stress_mpa));
      }
    }
    return new Extremes(extreme(strain), extreme(stress));
  }

  /** The greatest of some values, and the triangle that has it. */
  private static final class Greatest {
    private double value = -1;
    private int triangle;

    void look(int at, double candidate) {
      if (candidate > value) {
        value = candidate;
        triangle = at;
      }
    }
  }

  private double patch_mm2(int triangle) {
    double radius = body.wall().layers(triangle).whole_mm() / 2;
    return Math.PI * radius * radius;
  }

  private Extreme extreme(Greatest found) {
    int at = found.triangle;
    boolean nothing = found.value < NOTHING;
    return new Extreme(
        nothing ? 0 : found.value,
        at,
        auricle.region(at).key(),
        auricle.chart().heightPercent(at),
        centre(at),
        nothing ? "nowhere" : Extreme.place(auricle, at));
  }

  private Position centre(int triangle) {
    double[] c = new double[3];
    for (int i = 0; i < 3; i++) {
      int v = 3 * auricle.mesh().topology().vertex(triangle, i);
      for (int a = 0; a < 3; a++) {
        c[a] += body.unknowns()[v + a] / 3;
      }
    }
    return position(c);
  }

  /**
   * The shape.
   *
   * @param earlier unknowns of the state before this step
   */
  DeformedEar shape(double[] earlier) {
    return new ShapeReader(body, measurer).read(body.unknowns(), strains(), earlier);
  }

  /** The shape, with the fields of another. */
  DeformedEar moved(DeformedEar before) {
    return new ShapeReader(body, measurer).moved(body.unknowns(), before);
  }
}
