package auricle.viewer.viewmodel;

import auricle.viewer.scene.EarSurface;
import auricle.viewer.scene.Spot;
import auricle.viewer.task.EarMap;
import auricle.viewer.task.EarMap.OnTriangle;

/**
 * Finds the level and the place across the ear that belong to a point of the surface: the nearest
 * of all places, by a search that halves its steps. Distances are taken in the shape at rest.
 */
public final class Drag {
  private static final double FIRST_LEVEL_STEP = 8;
  private static final double FINEST = 0.02;

  private final EarMap map;
  private final EarSurface rest;
  private final Handle handle;

  /** Drags a handle over an ear whose shape at rest is given. */
  public Drag(EarMap map, EarSurface rest, Handle handle) {
    this.map = map;
    this.rest = rest;
    this.handle = handle;
  }

  /** The handle with the values whose place is nearest to a point of a triangle. */
  public Handle to(int triangle, double w1, double w2) {
    Spot goal = rest.place(triangle, w1, w2);
    double level = handle.level();
    double across = handle.across();
    double acrossPerLevel = handle.onWall() ? 2 : 0.5;
    double best = distance(level, across, goal);
    double step = FIRST_LEVEL_STEP;
    while (step > FINEST) {
      boolean better = false;
      for (int k = 0; k < 8; k++) {
        double l = clamp(level + step * Math.round(Math.cos(k * Math.PI / 4)), 0, 100);
        double reach = handle.onWall() ? 100 : 25;
        double a =
            clamp(
                across + acrossPerLevel * step * Math.round(Math.sin(k * Math.PI / 4)),
                handle.onWall() ? 0 : -reach,
                reach);
        double d = distance(l, a, goal);
        if (d < best) {
          best = d;
          level = l;
          across = a;
          better = true;
        }
      }
      step = better ? step : step / 2;
    }
    return at(level, across);
  }

  /** The handle at other values, rounded to what can be read: a tenth of either. */
  private Handle at(double level, double across) {
    return new Handle(
        handle.step(),
        handle.name(),
        handle.levelKey(),
        handle.acrossKey(),
        Math.round(level * 10) / 10.0,
        Math.round(across * 10) / 10.0,
        handle.onWall());
  }

  private double distance(double level, double across, Spot goal) {
    OnTriangle p = handle.place(map, level, across);
    return rest.place(p.triangle(), p.w1(), p.w2()).distance(goal);
  }

  private static double clamp(double v, double low, double high) {
    return Math.max(low, Math.min(high, v));
  }
}
