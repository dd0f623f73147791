package auricle.assessment;

import auricle.measurement.Figure;
import auricle.plan.Range;
import java.util.Locale;

/**
 * One measurement against what is aimed at.
 *
 * @param figure which measurement
 * @param before its value before the plan, in its unit
 * @param after its value after the plan
 * @param target where it is wanted
 */
public record Balance(Figure figure, double before, double after, Range target) {
  /** The last decimal that reports show. */
  private static final double SHOWN = 0.1;

  /** Whether it is where it is wanted. */
  public boolean met() {
    return target.contains(after);
  }

  /** How far beyond the target: 0 within, + above, − below, in its unit. */
  public double beyond() {
    return target.beyond(after);
  }

  /** Whether it is where it is wanted to the decimal that reports show. */
  public boolean metAsShown() {
    return Math.abs(beyond()) < SHOWN / 2;
  }

  /**
   * How it stands to the target in words, to a decimal: as wanted, at the edge, or by how much it
   * is too far out or back, too open or too tight, too much or too little.
   */
  public String words() {
    double beyond = beyond();
    if (!Double.isFinite(beyond)) {
      return "not measured";
    }
    if (beyond == 0) {
      return "as wanted";
    }
    if (metAsShown()) {
      return "at the edge";
    }
    String by = String.format(Locale.ROOT, "%.1f %s", Math.abs(beyond), figure.unit());
    return by + " too " + (beyond > 0 ? above() : below());
  }

  private String above() {
    return figure.unit().equals("deg") ? "open" : ofShow() ? "much" : "far out";
  }

  private String below() {
    return figure.unit().equals("deg") ? "tight" : ofShow() ? "little" : "far back";
  }

  private boolean ofShow() {
    return figure == Figure.HELICAL_SHOW_UPPER || figure == Figure.HELICAL_SHOW_MIDDLE;
  }
}
