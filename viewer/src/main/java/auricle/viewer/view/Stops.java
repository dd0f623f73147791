package auricle.viewer.view;

import auricle.viewer.scene.Sheet;
import auricle.viewer.scene.Sheet.Hold;
import auricle.viewer.scene.Sheet.Tone;
import auricle.viewer.task.Moment;
import java.util.List;

/** Names of the moments under the slider, as many as there is room for. */
final class Stops {
  private static final double THUMB_PX = 8;

  private Stops() {}

  static Sheet draw(List<Moment> course, int shown, double w, double h, double em) {
    Sheet sheet = new Sheet(w, h);
    double until = -1e9;
    for (int i = 0; i < course.size(); i++) {
      double x = THUMB_PX + (w - 2 * THUMB_PX) * i / Math.max(1, course.size() - 1);
      String words = name(course.get(i), i);
      double half = words.length() * 0.24 * em;
      boolean last = i == course.size() - 1;
      double left = i == 0 ? x - THUMB_PX : last ? x - 2 * half : x - half;
      boolean room = left > until && (last || x + half < w - 4.6 * em);
      if (room || (i == shown && left > until)) {
        Hold hold = i == 0 ? Hold.LEFT : last ? Hold.RIGHT : Hold.MIDDLE;
        double at = i == 0 ? 0 : last ? w : x;
        Tone tone = i == shown ? Tone.NOW : Tone.FAINT;
        sheet.words(at, 0.7 * em, words, tone, 0.85, i == shown, hold);
        until = left + 2 * half + 0.7 * em;
      }
    }
    return sheet;
  }

  private static String name(Moment m, int index) {
    return m.healed() || index == 0 ? m.label() : "step " + index;
  }
}
