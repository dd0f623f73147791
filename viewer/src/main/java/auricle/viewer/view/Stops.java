package auricle.viewer.view;

import auricle.viewer.scene.Sheet;
import auricle.viewer.scene.Sheet.Hold;
import auricle.viewer.scene.Sheet.Tone;
import auricle.viewer.task.Moment;
import java.util.List;

/** Names of the moments under the slider, as many as there is room for. */
final class Stops {
  private static final double THUMB_PX = 8;
  private static final double GAP_EM = 0.7;

  private Stops() {}

  static Sheet draw(List<Moment> course, int shown, double w, double h, double em) {
    Sheet sheet = new Sheet(w, h);
    double until = -1e9;
    int end = course.size() - 1;
    double free = end < 0 ? w : w - 2 * half(name(course.get(end), end), em) - GAP_EM * em;
    for (int i = 0; i < course.size(); i++) {
      double x = THUMB_PX + (w - 2 * THUMB_PX) * i / Math.max(1, end);
      String words = name(course.get(i), i);
      double half = half(words, em);
      boolean last = i == end;
      double left = i == 0 ? x - THUMB_PX : last ? x - 2 * half : x - half;
      boolean room = left > until && (last || x + half < free);
      if (room || (i == shown && left > until)) {
        Hold hold = i == 0 ? Hold.LEFT : last ? Hold.RIGHT : Hold.MIDDLE;
        double at = i == 0 ? 0 : last ? w : x;
        Tone tone = i == shown ? Tone.NOW : Tone.FAINT;
        sheet.words(at, 0.7 * em, words, tone, 0.85, i == shown, hold);
        until = left + 2 * half + GAP_EM * em;
      }
    }
    return sheet;
  }

  /** Half the width of words, about. */
  private static double half(String words, double em) {
    return words.length() * 0.24 * em;
  }

  private static String name(Moment m, int index) {
    return m.healed() || index == 0 ? m.label() : "step " + index;
  }
}
