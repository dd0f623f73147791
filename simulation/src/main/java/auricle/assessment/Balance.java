package auricle.assessment;

import auricle.measurement.Figure;
import auricle.plan.Range;

/**
 * One measurement against what is aimed at.
 *
 * @param figure which measurement
 * @param before its value before the plan, in its unit
 * @param after its value after the plan
 * @param target where it is wanted
 */
public record Balance(Figure figure, double before, double after, Range target) {
  /** Whether it is where it is wanted. */
  public boolean met() {
    return target.contains(after);
  }

  /** How far beyond the target: 0 within, + above, − below, in its unit. */
  public double beyond() {
    return target.beyond(after);
  }

  /** In words: on target, or by how much too far out or back. */
  public String words() {
    return met()
        ? "on target"
        : String.format(
            java.util.Locale.ROOT,
            "%.1f %s %s the target",
            Math.abs(beyond()),
            figure.unit(),
            beyond() > 0 ? "above" : "below");
  }
}
