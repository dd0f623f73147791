package auricle.report.picture;

import auricle.measurement.Figure;
import auricle.plan.Range;
import auricle.plan.Target;
import auricle.report.drawing.Ink;
import auricle.report.drawing.Page;
import auricle.report.drawing.Pen;
import java.util.List;
import java.util.Map;

/** What becomes of the correction over the year: distances and fold angles over time. */
public final class CourseChart {
  private static final double PANEL = 91;
  private static final double ROW = 79;

  private CourseChart() {}

  /**
   * The page.
   *
   * @param story the ear before and as it was tied
   * @param points the times in order, the tied state first
   * @param samples how the band was made, in words; empty if there is none
   */
  public static Page draw(EarStory story, List<CoursePoint> points, String samples) {
    Page page = Sheet.of("Over the year after the operation", story.caption(), Sheet.HEIGHT);
    legend(page, samples);
    Map<Figure, Range> targets = targets(story.target());
    for (int i = 0; i < LevelFigures.COURSE.size(); i++) {
      double left = Sheet.MARGIN + (i % 3) * PANEL;
      double top = Sheet.TOP + (i / 3) * ROW;
      Figure figure = LevelFigures.COURSE.get(i);
      Range target = targets.get(figure);
      new CoursePanel(page, figure, story, points, left + 9, top, PANEL - 14, ROW - 22)
          .draw(target);
    }
    return page;
  }

  private static Map<Figure, Range> targets(Target target) {
    Map<Figure, Range> targets = new java.util.EnumMap<>(Figure.class);
    target.helixMastoid_mm().forEach((level, r) -> targets.put(LevelFigures.distance(level), r));
    targets.put(Figure.FOLD_ANGLE_UPPER, target.foldAngleUpper_deg());
    targets.put(Figure.FOLD_ANGLE_MIDDLE, target.foldAngleMiddle_deg());
    return targets;
  }

  private static void legend(Page page, String samples) {
    double y = 14;
    double at = Sheet.WIDTH - Sheet.MARGIN - 90;
    page.line(at, y - 1, at + 8, y - 1, SectionPanel.BEFORE);
    page.label("before", at + 9.5, y, Sheet.SMALL);
    page.line(at + 24, y - 1, at + 32, y - 1, new Pen(Ink.BLUE, 0.8));
    page.label("standard tissue", at + 33.5, y, Sheet.SMALL);
    page.box(at + 60, y - 2.2, at + 68, y + 0.2, SectionPanel.TARGET);
    page.label("target", at + 69.5, y, Sheet.SMALL);
    if (!samples.isEmpty()) {
      page.box(at, y + 4.3, at + 8, y + 6.7, CoursePanel.BAND);
      page.label(samples, at + 9.5, y + 6.5, Sheet.SMALL);
    }
  }
}
