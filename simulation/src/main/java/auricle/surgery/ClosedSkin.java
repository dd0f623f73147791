package auricle.surgery;

import auricle.anatomy.SurfacePlace;
import auricle.energy.FixedPoint;
import auricle.energy.MaterialPoint;
import auricle.plan.SkinStrip;
import java.util.ArrayList;
import java.util.List;

/**
 * A strip of skin taken from behind the ear and closed: skin from the back of the antihelix to the
 * head is shorter by the width of the strip. As springs side by side, each for its share of the
 * strip's length, that pull at the tension of a closure and let go when the ear has come back by
 * the width of the strip.
 */
final class ClosedSkin implements Change {
  private static final int SPRINGS = 5;

  /**
   * Where the skin of the back of the ear begins to be drawn, share of the wall; our own choice.
   */
  private static final double WALL_PERCENT = 80;

  /** How far behind it the skin holds on to the head, mm; our own choice. */
  private static final double BEHIND_MM = 8;

  private final SkinStrip strip;
  private final List<BodyThread> springs = new ArrayList<>();
  private final List<Double> loose = new ArrayList<>();

  /**
   * @param tension_n_per_mm of a fresh closure, a millimetre of its length
   */
  ClosedSkin(SkinStrip strip, EarPlaces places, Bites bites, double tension_n_per_mm) {
    this.strip = strip;
    double top = places.foldLength_mm(strip.toLevel_percent());
    double length = places.foldLength_mm(strip.fromLevel_percent()) - top;
    for (int i = 0; i < SPRINGS; i++) {
      double along = length * (i + 0.5) / SPRINGS;
      addSpring(along, places, bites, tension_n_per_mm * length / SPRINGS);
    }
  }

  private void addSpring(double along, EarPlaces places, Bites bites, double tension_n) {
    double around = places.aroundAlongFold(strip.toLevel_percent(), along);
    SurfacePlace place =
        places.alongFold(
            strip.toLevel_percent(), along, places.wallOffset_mm(around, WALL_PERCENT));
    MaterialPoint back = bites.at(place, 0);
    double[] x = back.position(places.restUnknowns());
    double out = Math.hypot(x[1], x[2]);
    double far = (out + BEHIND_MM) / out;
    MaterialPoint head = new FixedPoint(0, far * x[1], far * x[2]);
    double span = Math.hypot(x[0], BEHIND_MM);
    double rest = Math.max(0.1 * span, span - strip.width_mm());
    loose.add(rest);
    springs.add(
        BodyThread.pulling(
            strip.name(),
            Purpose.SKIN,
            List.of(back, head),
            false,
            tension_n * rest / (span - rest)));
  }

  @Override
  public List<BodyThread> threads() {
    return List.copyOf(springs);
  }

  @Override
  public void tieAs(Change other, double[] u) {
    for (int i = 0; i < springs.size(); i++) {
      springs.get(i).thread().tieToLength(loose.get(i));
    }
  }

  @Override
  public Settled make(ShellBody body, Solving solving) {
    for (int i = 0; i < springs.size(); i++) {
      double now = springs.get(i).thread().length(body.unknowns());
      springs.get(i).thread().tighten(now, Math.min(now, loose.get(i)));
    }
    Settled settled = body.settle(solving);
    for (int i = 0; i < springs.size(); i++) {
      springs.get(i).thread().tieToLength(loose.get(i));
    }
    return settled;
  }
}
