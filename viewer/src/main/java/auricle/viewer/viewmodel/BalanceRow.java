package auricle.viewer.viewmodel;

import auricle.anatomy.Level;
import auricle.plan.Range;
import java.util.Locale;
import java.util.Optional;

/**
 * One measurement in the balance: before, as shown now, at the end of the course, and what is
 * wanted.
 *
 * @param label what it is
 * @param unit mm or deg
 * @param before the operation
 * @param now at the moment that is shown
 * @param year at 12 months; NaN if not known
 * @param target what is wanted
 * @param level of the ear at which it is taken
 */
public record BalanceRow(
    String label,
    String unit,
    double before,
    double now,
    double year,
    Range target,
    Optional<Level> level) {

  /** Whether the value now is within the target. */
  public boolean met() {
    return target.contains(now);
  }

  /** How far the value now lies outside the target: + above, − below. */
  public String verdict() {
    double beyond = target.beyond(now);
    if (Double.isNaN(now)) {
      return "not measured";
    }
    if (beyond == 0) {
      return "within";
    }
    double size = Math.abs(beyond);
    boolean angle = unit.equals("deg");
    int decimals = (angle ? 0 : 1) + (size < (angle ? 0.95 : 0.095) ? 1 : 0); // never "+0"
    return (beyond > 0 ? "+" : "−")
        + String.format(Locale.ROOT, "%." + decimals + "f", size)
        + (angle ? "°" : "");
  }
}
