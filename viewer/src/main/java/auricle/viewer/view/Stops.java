package auricle.viewer.view;

import auricle.viewer.scene.Sheet;
import auricle.viewer.scene.Sheet.Hold;
import auricle.viewer.scene.Sheet.Tone;
import auricle.viewer.task.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Names of the moments under the slider, as many as there is room for. */
final class Stops {
  private static final double THUMB_PX = 8;
  private static final double GAP_EM = 0.7;

  /** Half the width of a letter, about. */
  private static final double HALF_LETTER_EM = 0.24;

  private final Sheet sheet;
  private final double em;
  private final List<Span> taken = new ArrayList<>();

  /** From where to where a name reaches, the room around it included. */
  private record Span(double left, double right) {
    boolean meets(Span other) {
      return left < other.right && other.left < right;
    }
  }

  private Stops(Sheet sheet, double em) {
    this.sheet = sheet;
    this.em = em;
  }

  /** The moment that is shown has its name first, then both ends, then whoever finds room. */
  static Sheet draw(List<Moment> course, int shown, double w, double h, double em) {
    Stops stops = new Stops(new Sheet(w, h), em);
    int end = course.size() - 1;
    IntStream.concat(IntStream.of(shown, end, 0), IntStream.range(1, end))
        .distinct()
        .filter(i -> i >= 0 && i <= end)
        .forEach(i -> stops.name(i, end, name(course.get(i), i), i == shown));
    return stops.sheet;
  }

  private void name(int index, int end, String words, boolean shown) {
    double w = sheet.width();
    Hold hold = index == 0 ? Hold.LEFT : index == end ? Hold.RIGHT : Hold.MIDDLE;
    double middle = THUMB_PX + (w - 2 * THUMB_PX) * index / Math.max(1, end);
    double at = hold == Hold.LEFT ? 0 : hold == Hold.RIGHT ? w : middle;
    double half = words.length() * HALF_LETTER_EM * em;
    double centre = hold == Hold.LEFT ? half : hold == Hold.RIGHT ? w - half : middle;
    double reach = half + GAP_EM * em / 2;
    Span span = new Span(centre - reach, centre + reach);
    if (taken.stream().noneMatch(span::meets)) {
      taken.add(span);
      sheet.words(at, 0.7 * em, words, shown ? Tone.NOW : Tone.FAINT, 0.85, shown, hold);
    }
  }

  private static String name(Moment m, int index) {
    return m.healed() || index == 0 ? m.label() : "step " + index;
  }
}
