package auricle.report;

import auricle.anatomy.Side;
import auricle.rehearsal.RehearsalResult;
import java.util.Locale;

/** What the ears of a report are called. */
final class EarNames {
  private EarNames() {}

  /** Name of its side in files: right or left. */
  static String key(RehearsalResult ear) {
    return side(ear).name().toLowerCase(Locale.ROOT);
  }

  /** Which ear. */
  static Side side(RehearsalResult ear) {
    return ear.ear().ear().side();
  }

  /** Which ear in words: Right ear, Left ear. */
  static String words(RehearsalResult ear) {
    return side(ear) == Side.RIGHT ? "Right ear" : "Left ear";
  }

  /** What is added to the names of files of one ear of a pair. */
  static String suffix(RehearsalReport report, RehearsalResult ear) {
    return report.ofPair() ? "_" + key(ear) : "";
  }
}
