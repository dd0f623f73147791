package auricle.viewer.task;

import auricle.anatomy.Auricle;
import auricle.anatomy.Chart;
import auricle.anatomy.Region;
import auricle.anatomy.SurfaceSpot;
import auricle.viewer.scene.EarSurface;
import auricle.viewer.scene.Spot;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * Places of a plan on an auricle, by its chart; the same rules as those of the surgery itself. What
 * was asked for is kept: most steps of a plan stand where they stood before it was changed. Safe
 * for use by several threads.
 */
final class ChartMap implements EarMap {
  /** A bite that is dragged about asks for ever new places; no more than these are kept. */
  private static final int KEPT = 5000;

  private enum Way {
    BESIDE_FOLD,
    ON_WALL,
    ON_CAUDA,
    ON_RIM
  }

  private record Asked(Way way, double first, double second) {}

  private final Map<Asked, OnTriangle> known = new ConcurrentHashMap<>();
  private final Auricle auricle;
  private final Chart chart;
  private final EarSurface rest;

  ChartMap(Auricle auricle, EarSurface rest) {
    this.auricle = auricle;
    this.chart = auricle.chart();
    this.rest = rest;
  }

  private OnTriangle kept(Way way, double first, double second, Supplier<OnTriangle> find) {
    if (known.size() > KEPT) {
      known.clear();
    }
    return known.computeIfAbsent(new Asked(way, first, second), asked -> find.get());
  }

  @Override
  public OnTriangle besideFold(double level_percent, double fromFold_mm) {
    return kept(
        Way.BESIDE_FOLD,
        level_percent,
        fromFold_mm,
        () -> findBesideFold(level_percent, fromFold_mm));
  }

  @Override
  public OnTriangle onWall(double level_percent, double wall_percent) {
    return kept(
        Way.ON_WALL, level_percent, wall_percent, () -> findOnWall(level_percent, wall_percent));
  }

  @Override
  public OnTriangle onRim(double level_percent) {
    return kept(Way.ON_RIM, level_percent, 0, () -> findOnRim(level_percent));
  }

  @Override
  public OnTriangle onCauda(double fromTip_mm) {
    return kept(Way.ON_CAUDA, fromTip_mm, 0, () -> findOnCauda(fromTip_mm));
  }

  private OnTriangle findBesideFold(double level_percent, double fromFold_mm) {
    return on(chart.fromFold(chart.aroundAtHeight(level_percent), fromFold_mm));
  }

  private OnTriangle findOnWall(double level_percent, double wall_percent) {
    double around = chart.aroundAtHeight(level_percent);
    double foot_mm = chart.foldOffsetAt_mm(around, Chart.FOOT);
    return on(chart.fromFold(around, (1 - wall_percent / 100) * foot_mm));
  }

  private OnTriangle findOnRim(double level_percent) {
    double around = chart.aroundOfRimAtHeight(level_percent);
    return on(chart.spot(around, chart.acrossOfRim(around)));
  }

  /**
   * The triangle of the cauda whose middle is nearest to so far from the middle of its last one.
   */
  private OnTriangle findOnCauda(double fromTip_mm) {
    int tip = tip();
    int best = tip;
    double least = Double.MAX_VALUE;
    for (int t = 0; t < rest.triangleCount(); t++) {
      if (auricle.region(t) == Region.CAUDA_HELICIS) {
        double off = Math.abs(middle(t).distance(middle(tip)) - fromTip_mm);
        if (off < least) {
          least = off;
          best = t;
        }
      }
    }
    return new OnTriangle(best, 1 / 3.0, 1 / 3.0);
  }

  private int tip() {
    int tip = 0;
    double furthest = -1;
    for (int t = 0; t < rest.triangleCount(); t++) {
      if (auricle.region(t) == Region.CAUDA_HELICIS && chart.aroundOf(t) > furthest) {
        furthest = chart.aroundOf(t);
        tip = t;
      }
    }
    return tip;
  }

  private Spot middle(int triangle) {
    return rest.place(triangle, 1 / 3.0, 1 / 3.0);
  }

  private static OnTriangle on(SurfaceSpot spot) {
    return new OnTriangle(spot.triangle(), spot.weight1(), spot.weight2());
  }
}
