package auricle.plan;

import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import java.util.List;
import java.util.Locale;

/** Checks that several kinds of operations share. */
final class OperationCheck {
  private OperationCheck() {}

  /** A name that is missing and doses out of their bounds. */
  static List<Finding> doses(Operation operation, String at) {
    Findings findings = new Findings();
    if (operation.name().isBlank()) {
      findings.error(at + "/name", "no name", "a name, so that tables can tell the step", "");
    }
    for (Dose dose : operation.doses()) {
      if (!dose.allowed()) {
        findings.add(outside(at + "/" + dose.key(), dose));
      }
    }
    return findings.list();
  }

  /** A value out of its bounds, told at a place. */
  static Finding outside(String at, Dose dose) {
    return Finding.error(
        at,
        dose.label() + " of " + number(dose.value(), dose.unit()),
        number(dose.low(), "") + " to " + number(dose.high(), dose.unit()),
        sentence(dose.reason()));
  }

  /** A band whose ends are the wrong way round. */
  static List<Finding> band(Operation operation, double from, double to, String at) {
    Findings findings = new Findings();
    findings.addAll(doses(operation, at));
    if (from >= to) {
      findings.error(
          at + "/from_level_percent",
          "from " + number(from, "%") + " to " + number(to, "%"),
          "the lower level first",
          "Levels count upwards from the lobule; swap the two.");
    }
    return findings.list();
  }

  /** A number as it would be written, with its unit. */
  static String number(double value, String unit) {
    String text =
        value == Math.rint(value) && Math.abs(value) < 1e15
            ? String.format(Locale.ROOT, "%.0f", value)
            : String.valueOf((float) value);
    return unit.isEmpty() ? text : text + " " + unit;
  }

  private static String sentence(String reason) {
    return reason.isEmpty()
        ? ""
        : reason.substring(0, 1).toUpperCase(Locale.ROOT) + reason.substring(1) + ".";
  }
}
