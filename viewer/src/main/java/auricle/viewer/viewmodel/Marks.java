package auricle.viewer.viewmodel;

import auricle.plan.Bolster;
import auricle.plan.BowlStrip;
import auricle.plan.CaudaExcision;
import auricle.plan.ConchaMastoidSuture;
import auricle.plan.FoldSuture;
import auricle.plan.FullThicknessIncision;
import auricle.plan.LobuleSuture;
import auricle.plan.Operation;
import auricle.plan.Plan;
import auricle.plan.RimShaving;
import auricle.plan.RimWedge;
import auricle.plan.Scoring;
import auricle.plan.SkinStrip;
import auricle.viewer.task.EarMap;
import auricle.viewer.task.EarMap.OnTriangle;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Where the steps of a plan stand on the ear: what can be dragged, and lines to draw. */
public final class Marks {
  private static final int POINTS = 24;

  private Marks() {}

  /**
   * A line of a step on the surface.
   *
   * @param step index in the plan
   * @param posterior whether it lies on the posterior face
   * @param places its points in order
   */
  public record Line(int step, boolean posterior, List<OnTriangle> places) {
    /** Keeps its own copy. */
    public Line {
      places = List.copyOf(places);
    }
  }

  /** What can be dragged of one step. */
  public static List<Handle> handles(Plan plan, int step) {
    Operation operation = plan.operations().get(step);
    List<Handle> handles = new ArrayList<>();
    if (operation instanceof FoldSuture) {
      for (String bite : List.of("scapha_upper", "scapha_lower", "concha_upper", "concha_lower")) {
        String[] words = bite.split("_", 2);
        handles.add(
            handle(
                operation,
                step,
                words[1] + " " + words[0] + " bite",
                bite + "_level_percent",
                bite + "_from_fold_mm"));
      }
    } else if (operation instanceof ConchaMastoidSuture) {
      handles.add(handle(operation, step, "bite on the bowl", "level_percent", "wall_percent"));
    } else if (operation instanceof LobuleSuture) {
      handles.add(
          handle(operation, step, "bite on the bowl", "bowl_level_percent", "bowl_wall_percent"));
    }
    return handles;
  }

  private static Handle handle(
      Operation operation, int step, String name, String levelKey, String acrossKey) {
    return new Handle(
        step,
        name,
        levelKey,
        acrossKey,
        operation.dose(levelKey).value(),
        operation.dose(acrossKey).value(),
        acrossKey.endsWith("wall_percent"));
  }

  /**
   * Looks up every place of a plan, for a map that keeps what it has found: drawing them then takes
   * the screen's thread no time.
   */
  static void find(Plan plan, EarMap map) {
    for (int i = 0; i < plan.operations().size(); i++) {
      if (plan.operations().get(i).enabled()) {
        lines(plan, i, map);
      }
      handles(plan, i).forEach(handle -> handle.place(map));
    }
  }

  /** The lines of one step; threads are not among them, they come with the result. */
  public static List<Line> lines(Plan plan, int step, EarMap map) {
    Operation o = plan.operations().get(step);
    if (o instanceof Scoring s) {
      double half = s.width_mm() / 2;
      boolean back = s.face() == auricle.plan.Face.POSTERIOR;
      List<Line> lines = new ArrayList<>();
      int cuts = Math.max(1, (int) Math.round(s.width_mm() / s.spacing_mm()));
      for (int i = 0; i <= cuts; i++) {
        double at = s.fromFold_mm() - half + s.width_mm() * i / cuts;
        lines.add(
            line(
                step,
                back,
                s.fromLevel_percent(),
                s.toLevel_percent(),
                l -> map.besideFold(l, at)));
      }
      return lines;
    }
    if (o instanceof FullThicknessIncision i) {
      return List.of(
          line(
              step,
              false,
              i.fromLevel_percent(),
              i.toLevel_percent(),
              l -> map.besideFold(l, i.fromFold_mm())));
    }
    if (o instanceof BowlStrip b) {
      return List.of(
          line(
              step,
              true,
              b.fromLevel_percent(),
              b.toLevel_percent(),
              l -> map.onWall(l, b.wall_percent())));
    }
    if (o instanceof SkinStrip s) {
      return List.of(
          line(step, true, s.fromLevel_percent(), s.toLevel_percent(), l -> map.onWall(l, 70)));
    }
    return others(o, step, map);
  }

  private static List<Line> others(Operation o, int step, EarMap map) {
    if (o instanceof Bolster b) {
      return List.of(
          line(
              step,
              true,
              -Bolster.REACH_MM,
              Bolster.REACH_MM,
              x -> map.besideFold(b.level_percent(), x)));
    }
    if (o instanceof RimWedge w) {
      return List.of(line(step, true, w.level_percent() - 2, w.level_percent() + 2, map::onRim));
    }
    if (o instanceof RimShaving r) {
      double half = r.length_mm() / 1.3;
      return List.of(
          line(
              step,
              false,
              Math.max(5, r.level_percent() - half),
              Math.min(99, r.level_percent() + half),
              map::onRim));
    }
    if (o instanceof CaudaExcision c) {
      return List.of(line(step, true, 0, c.length_mm(), map::onCauda));
    }
    return List.of();
  }

  private static Line line(
      int step, boolean posterior, double from, double to, DoubleFunction<OnTriangle> at) {
    List<OnTriangle> places = new ArrayList<>();
    for (int i = 0; i <= POINTS; i++) {
      places.add(at.apply(from + (to - from) * i / POINTS));
    }
    return new Line(step, posterior, places);
  }
}
