package auricle.plan;

import auricle.anatomy.Level;
import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The balance that is aimed at.
 *
 * @param helixMastoid_mm distance of rim (at LOBULE: of lobule) from the mastoid plane, by level,
 *     mm
 * @param foldAngleUpper_deg scapha-conchal angle at the upper level, deg
 * @param foldAngleMiddle_deg scapha-conchal angle at the middle level, deg
 * @param auriculocephalicAngle_deg angle between ear and head, deg
 * @param helicalShow_mm how far the helix stands beyond the antihelix from the front in the upper
 *     third, mm
 * @param sideDifference_mm largest difference between the two ears at any level, mm
 */
public record Target(
    Map<Level, Range> helixMastoid_mm,
    Range foldAngleUpper_deg,
    Range foldAngleMiddle_deg,
    Range auriculocephalicAngle_deg,
    Range helicalShow_mm,
    double sideDifference_mm) {

  /** McDowell 1968 (from memory): the two sides within 3 mm at any level. */
  public static final double USUAL_SIDE_DIFFERENCE_MM = 3;

  private static final String MCDOWELL = "McDowell 1968, Plast Reconstr Surg 41:17-27";

  /**
   * @param helixMastoid_mm one range a level
   */
  public Target {
    helixMastoid_mm = Map.copyOf(helixMastoid_mm);
  }

  /** The usual target balance; each range names its source and how sure it is. */
  public static Target usual() {
    return new Target(
        Map.of(
            Level.UPPER,
            new Range(10, 12, MCDOWELL + ", as cited by MacIsaac 2019", "seen"),
            Level.MIDDLE,
            new Range(16, 18, MCDOWELL, "memory"),
            Level.LOWER,
            new Range(20, 22, MCDOWELL, "memory"),
            Level.LOBULE,
            new Range(14, 22, "own choice: no further out than the lower level", "convention")),
        foldAngle(),
        foldAngle(),
        new Range(15, 30, "textbook chapters", "2nd"),
        new Range(2, 5, "secondary text, upper third", "2nd"),
        USUAL_SIDE_DIFFERENCE_MM);
  }

  private static Range foldAngle() {
    return new Range(
        85, 107, "about 90 as surgical aim, normal ears 107 (da Silva Freitas 2008)", "practice");
  }

  /** Everything that is wrong with it. {@code at} is its JSON pointer. */
  public List<Finding> findings(String at) {
    Findings findings = new Findings();
    Map<Level, Range> sorted = new EnumMap<>(Level.class);
    sorted.putAll(helixMastoid_mm);
    for (Level level : Level.values()) {
      String key = at + "/" + key(level);
      if (!sorted.containsKey(level)) {
        findings.error(key, "no range for this level", "a least and a greatest value", "");
      }
    }
    sorted.forEach((level, range) -> check(findings, at + "/" + key(level), range, 0, 60));
    check(findings, at + "/fold_angle_upper_deg", foldAngleUpper_deg, 20, 180);
    check(findings, at + "/fold_angle_middle_deg", foldAngleMiddle_deg, 20, 180);
    check(findings, at + "/auriculocephalic_angle_deg", auriculocephalicAngle_deg, 0, 120);
    check(findings, at + "/helical_show_mm", helicalShow_mm, -20, 20);
    if (!(sideDifference_mm >= 0 && sideDifference_mm <= 20)) {
      findings.error(
          at + "/side_difference_mm",
          OperationCheck.number(sideDifference_mm, "mm"),
          "0 to 20 mm",
          "It is the largest difference between the two ears that is accepted.");
    }
    return findings.list();
  }

  /** Name of the distance at a level, as files and tables use it. */
  public static String key(Level level) {
    return level == Level.LOBULE
        ? "lobule_mastoid_mm"
        : "helix_mastoid_" + level.name().toLowerCase(Locale.ROOT) + "_mm";
  }

  private static void check(Findings findings, String at, Range range, double low, double high) {
    if (!(range.low() <= range.high())) {
      findings.error(at, words(range), "the lesser value first", "Swap the two.");
    } else if (!(range.low() >= low && range.high() <= high)) {
      String expected = OperationCheck.number(low, "") + " to " + OperationCheck.number(high, "");
      findings.error(at, words(range), "values within " + expected, "No ear measures that.");
    }
  }

  private static String words(Range range) {
    return OperationCheck.number(range.low(), "")
        + " to "
        + OperationCheck.number(range.high(), "");
  }
}
