package auricle.plan;

import auricle.diagnostics.Finding;
import java.util.List;

/**
 * One thing done to the ear: a step of the plan. Operations are data; what they do is worked out
 * elsewhere. Levels are given in % of the height of the ear (0 the lowest point of the lobule, 100
 * the top of the helix), places across the ear in mm along the profile from the fold line
 * (antihelix, then superior crus), + towards the rim.
 */
public sealed interface Operation
    permits TiedOperation,
        Scoring,
        FullThicknessIncision,
        BowlStrip,
        CaudaExcision,
        SkinStrip,
        RimWedge,
        RimShaving,
        Bolster {

  /** What the user calls it; once in a plan. */
  String name();

  /** Whether it is done; a step that is not stays in the plan. */
  boolean enabled();

  /** What kind it is, as files name it: {@code fold_suture}. */
  String kind();

  /** What kind it is, in the words of the trade. */
  String words();

  /** Every number of it that can be turned, in the order in which they are told. */
  List<Dose> doses();

  /** The same kind of operation with another name, state and other doses. */
  Operation with(String name, boolean enabled, DoseValues doses);

  /** The same with one dose changed. It is not checked here: {@link #findings} does that. */
  default Operation withDose(String key, double value) {
    return with(name(), enabled(), DoseValues.of(doses()).with(key, value));
  }

  /** The same under another name. */
  default Operation withName(String name) {
    return with(name, enabled(), DoseValues.of(doses()));
  }

  /** The same, done or left out. */
  default Operation withEnabled(boolean enabled) {
    return with(name(), enabled, DoseValues.of(doses()));
  }

  /** One of the doses. */
  default Dose dose(String key) {
    return doses().stream()
        .filter(d -> d.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no dose '" + key + "' in " + kind()));
  }

  /**
   * Everything that is wrong with it, or doubtful.
   *
   * @param at JSON pointer of the operation, which the places begin with
   */
  default List<Finding> findings(String at) {
    return OperationCheck.doses(this, at);
  }
}
