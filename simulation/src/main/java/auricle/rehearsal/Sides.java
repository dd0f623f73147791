package auricle.rehearsal;

import auricle.anatomy.Side;
import auricle.assessment.Assessor;
import auricle.assessment.SideDifference;
import java.util.List;
import java.util.Map;

/** The two ears of a pair against each other, as they are after their plans. */
public final class Sides {
  private Sides() {}

  /**
   * The differences at every level, by the limit that the right ear's target has.
   *
   * @param results of the ears that were rehearsed
   * @return nothing if there is one ear only
   */
  public static List<SideDifference> of(Map<Side, RehearsalResult> results) {
    RehearsalResult right = results.get(Side.RIGHT);
    RehearsalResult left = results.get(Side.LEFT);
    return right == null || left == null
        ? List.of()
        : Assessor.sides(
            right.after().measures(),
            left.after().measures(),
            right.ear().target().sideDifference_mm());
  }
}
