package auricle.report.picture;

import auricle.anatomy.Level;
import auricle.measurement.Figure;
import auricle.report.drawing.Ink;
import auricle.report.drawing.Page;
import java.util.Locale;

/**
 * Horizontal sections through the ear at the four levels, before and after, to scale above the
 * mastoid plane, with the distances measured and the target bands.
 */
public final class SectionsPicture {
  private static final double DRAWING = 133;
  private static final double COLUMN = 44;
  private static final double FIGURES = 26;
  private static final double PANEL_HEIGHT = 80;
  private static final double GROUND = 71;

  private SectionsPicture() {}

  /** The page. */
  public static Page draw(EarStory story) {
    Page page = Sheet.of("Sections at four levels", story.caption(), Sheet.HEIGHT);
    SectionScale scale = new SectionScale(story, DRAWING, GROUND - FIGURES);
    legend(page, scale);
    for (Level level : Level.values()) {
      double left = Sheet.MARGIN + (level.ordinal() % 2) * (DRAWING + 7);
      double top = Sheet.TOP + (level.ordinal() / 2) * PANEL_HEIGHT;
      String share = String.format(Locale.ROOT, "%.0f", level.heightPercent());
      String title = LevelFigures.name(level);
      page.label(title, left, top + 5, Sheet.TEXT.inBold());
      double after = left + Page.width_mm(title, Sheet.TEXT.inBold()) + 2.5;
      page.label("at " + share + " % of ear height", after, top + 5, Sheet.SMALL.in(Ink.GREY));
      new SectionPanel(page, story, level, scale, left, top + GROUND, DRAWING).draw();
      figures(page, story, level, left, top + 11);
    }
    return page;
  }

  private static void legend(Page page, SectionScale scale) {
    double right = Sheet.WIDTH - Sheet.MARGIN;
    String seen =
        String.format(
            Locale.ROOT,
            "Seen from above, scale %s : 1; black: where the angles are read, the scapha-conchal one across the fold",
            scale.factor());
    page.label(seen.replace(".0 ", " "), right, 21.5, Sheet.SMALL.in(Ink.GREY).ending());
    double y = 14;
    double at = right - 62;
    page.line(at, y - 1, at + 8, y - 1, SectionPanel.BEFORE);
    page.label("before", at + 9.5, y, Sheet.SMALL);
    page.box(at + 22, y - 2.2, at + 30, y + 0.2, SectionPanel.AFTER_WALL);
    page.label("after", at + 31.5, y, Sheet.SMALL);
    page.box(at + 42, y - 2.2, at + 50, y + 0.2, SectionPanel.TARGET);
    page.label("target", at + 51.5, y, Sheet.SMALL);
  }

  private static void figures(Page page, EarStory story, Level level, double x, double y) {
    String head = level == Level.LOBULE ? "Lobule to mastoid, mm" : "Helix to mastoid, mm";
    FigureBlock block = new FigureBlock(page, story, x, y, COLUMN);
    block.add(head, LevelFigures.distance(level), story.target().helixMastoid_mm().get(level));
    if (level == Level.UPPER) {
      block.add(
          "Scapha-conchal angle, deg",
          Figure.FOLD_ANGLE_UPPER,
          story.target().foldAngleUpper_deg());
    } else if (level == Level.MIDDLE) {
      block.add(
          "Scapha-conchal angle, deg",
          Figure.FOLD_ANGLE_MIDDLE,
          story.target().foldAngleMiddle_deg());
      block.add(
          "Auriculocephalic angle, deg",
          Figure.AURICULOCEPHALIC_ANGLE,
          story.target().auriculocephalicAngle_deg());
    }
  }
}
