package auricle.report.picture;

import auricle.anatomy.Level;
import auricle.rehearsal.DeformedEar;
import java.util.List;

/**
 * One scale for all sections of an ear, so that they can be compared; a plain number, so that a
 * ruler can be laid on the print.
 */
final class SectionScale {
  private static final double[] FACTORS = {4, 3, 2.5, 2.25, 2, 1.75, 1.5, 1.25, 1, 0.75, 0.5, 0.25};

  /** Free space for two dimension lines behind the ear, mm on the page. */
  private static final double BEHIND = 26;

  private static final double FRONT = 4;
  private static final double ABOVE = 5;

  private final double mirror;
  private final double front_mm;
  private final double back_mm;
  private final double factor;
  private final double width;
  private final double height;

  /**
   * @param width of a drawing on the page, mm
   * @param height of a drawing above the mastoid plane, mm
   */
  SectionScale(EarStory story, double width, double height) {
    double front = -1000;
    double back = 1000;
    double top = 1;
    for (Level level : Level.values()) {
      for (Moment moment : List.of(story.before(), story.after())) {
        for (EarCut.Place p :
            pieces(moment.shape(), level).stream().flatMap(List::stream).toList()) {
          front = Math.max(front, p.anterior_mm() + 1);
          back = Math.min(back, p.anterior_mm() - 1);
          top = Math.max(top, p.lateral_mm() + 1);
        }
      }
    }
    this.mirror = story.mirror();
    this.front_mm = front;
    this.back_mm = back;
    this.width = width;
    this.height = height;
    this.factor = factor(width - BEHIND - FRONT, height - ABOVE, Math.max(front - back, 1), top);
  }

  private static double factor(double width, double height, double across_mm, double up_mm) {
    for (double f : FACTORS) {
      if (f * across_mm <= width && f * up_mm <= height) {
        return f;
      }
    }
    return FACTORS[FACTORS.length - 1];
  }

  /** Mm on the page for a mm of the ear. */
  double factor() {
    return factor;
  }

  /** Height of the drawing above the mastoid plane, mm on the page. */
  double height() {
    return height;
  }

  /** Place across the drawing, from its left edge. */
  double x(double anterior_mm) {
    double slack = width - BEHIND - factor * (front_mm - back_mm);
    double fromFront = slack / 2 + factor * (front_mm - anterior_mm);
    return mirror > 0 ? fromFront : width - fromFront;
  }

  /** Rearmost place of the ear across the drawing, from its left edge. */
  double behind() {
    return x(back_mm);
  }

  /** Distance of the dimension lines behind the ear from each other, mm on the page. */
  double sideStep() {
    return BEHIND / 2.5;
  }

  /** The pieces of the wall at a level. */
  static List<List<EarCut.Place>> pieces(DeformedEar ear, Level level) {
    return EarCut.at(ear, EarCut.height_mm(ear, level.heightPercent()));
  }
}
