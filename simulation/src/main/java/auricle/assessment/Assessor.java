package auricle.assessment;

import auricle.anatomy.Level;
import auricle.measurement.Figure;
import auricle.measurement.Measures;
import auricle.plan.EarCase;
import auricle.plan.Range;
import auricle.plan.Target;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Says what there is to say about an ear before and after a plan. */
public final class Assessor {
  private static final Map<Figure, Level> BY_LEVEL =
      Map.of(
          Figure.HELIX_MASTOID_UPPER, Level.UPPER,
          Figure.HELIX_MASTOID_MIDDLE, Level.MIDDLE,
          Figure.HELIX_MASTOID_LOWER, Level.LOWER,
          Figure.LOBULE_MASTOID, Level.LOBULE);

  private Assessor() {}

  /**
   * Assesses one ear with the limits that come with the program.
   *
   * @param ear the ear with its plan and target
   * @param before measured before the plan
   * @param after measured after it
   * @param threads what the threads carry afterwards
   */
  public static Assessment assess(
      EarCase ear, Measures before, Measures after, List<ThreadLoad> threads) {
    Limits limits = Limits.shipped();
    List<Caution> cautions = new ArrayList<>();
    if (!ear.plan().enabled().isEmpty()) {
      new ShapeCautions(limits, before, after, cautions).add();
    }
    PlanCautions plan = new PlanCautions(limits, ear.plan().enabled(), cautions);
    plan.addForPlan(before.bowlDepth_mm());
    plan.addForThreads(threads);
    return new Assessment(
        new FaultFinder(limits, before).faults(), balance(ear.target(), before, after), cautions);
  }

  private static List<Balance> balance(Target target, Measures before, Measures after) {
    List<Balance> balance = new ArrayList<>();
    wanted(target)
        .forEach(
            (figure, range) ->
                balance.add(new Balance(figure, figure.of(before), figure.of(after), range)));
    return balance;
  }

  private static Map<Figure, Range> wanted(Target target) {
    Map<Figure, Range> wanted = new LinkedHashMap<>();
    for (Figure figure : Figure.values()) {
      Level level = BY_LEVEL.get(figure);
      Range range = level == null ? null : target.helixMastoid_mm().get(level);
      if (range != null) {
        wanted.put(figure, range);
      }
    }
    wanted.put(Figure.FOLD_ANGLE_UPPER, target.foldAngleUpper_deg());
    wanted.put(Figure.FOLD_ANGLE_MIDDLE, target.foldAngleMiddle_deg());
    wanted.put(Figure.AURICULOCEPHALIC_ANGLE, target.auriculocephalicAngle_deg());
    wanted.put(Figure.HELICAL_SHOW_UPPER, target.helicalShow_mm());
    return wanted;
  }

  /**
   * The two ears of a pair held against each other at every level.
   *
   * @param right measured on the right ear, in its own frame
   * @param left measured on the left ear, in its own frame
   * @param limit_mm largest difference accepted, mm
   */
  public static List<SideDifference> sides(Measures right, Measures left, double limit_mm) {
    Limit shipped = Limits.shipped().of("side_difference");
    Limit limit =
        limit_mm == shipped.value()
            ? shipped
            : new Limit(shipped.key(), limit_mm, "mm", "given in the scenario", "given");
    List<SideDifference> sides = new ArrayList<>();
    for (Figure figure : Figure.values()) {
      if (BY_LEVEL.containsKey(figure)) {
        sides.add(new SideDifference(figure, figure.of(right), figure.of(left), limit));
      }
    }
    return sides;
  }
}
