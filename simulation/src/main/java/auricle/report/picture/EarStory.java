package auricle.report.picture;

import auricle.anatomy.Side;
import auricle.plan.Target;

/**
 * One ear before and after, for pictures.
 *
 * @param caption what stands on every picture
 * @param side which ear; a left one is drawn mirrored
 * @param before the ear before the plan
 * @param after the ear after its last step
 * @param target what is aimed at
 */
public record EarStory(Caption caption, Side side, Moment before, Moment after, Target target) {
  /** 1 for a right ear, −1 for a left one, which is drawn mirrored. */
  double mirror() {
    return side == Side.RIGHT ? 1 : -1;
  }
}
