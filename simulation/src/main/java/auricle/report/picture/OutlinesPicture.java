package auricle.report.picture;

import auricle.anatomy.Level;
import auricle.report.drawing.Ink;
import auricle.report.drawing.Page;
import auricle.report.drawing.Pen;
import auricle.report.drawing.Style;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.Locale;

/**
 * The ear from the side and from the front, after the plan and as a ghost before it, and beside the
 * front view how far the helix stands beyond the antihelix along the height.
 */
public final class OutlinesPicture {
  private static final Ink SKIN_DARK = new Ink(150, 118, 98, 1);
  private static final Ink SKIN_LIGHT = new Ink(253, 244, 235, 1);
  private static final double VIEW_TOP = 46;
  private static final double VIEW_HEIGHT = 138;
  private static final double[] FACTORS = {3, 2.5, 2, 1.75, 1.5, 1.25, 1, 0.75, 0.5, 0.25};
  private static final Pen GHOST = new Pen(new Ink(70, 70, 70, 1), 0.3, 0.9);
  private static final Pen CONTOUR = new Pen(Ink.BLACK, 0.3);
  private static final Pen RIM = new Pen(Ink.BLUE, 0.7);
  private static final Pen CREST = new Pen(Ink.VERMILION, 0.7);

  private final Page page;
  private final EarStory story;
  private final double factor;

  private OutlinesPicture(EarStory story) {
    this.story = story;
    this.page = Sheet.of("From the side and from the front", story.caption(), Sheet.HEIGHT);
    this.factor = factor(story);
  }

  /** The page. */
  public static Page draw(EarStory story) {
    return new OutlinesPicture(story).draw();
  }

  private static double factor(EarStory story) {
    double[] side = both(story, View.SIDE);
    double[] front = both(story, View.FRONT);
    double high = side[3] - side[1];
    for (double f : FACTORS) {
      if (f * high <= VIEW_HEIGHT && f * (side[2] - side[0]) <= 92 && f * frontWidth(front) <= 78) {
        return f;
      }
    }
    return FACTORS[FACTORS.length - 1];
  }

  /** The front view reaches to the mastoid plane. */
  private static double frontWidth(double[] box) {
    return Math.max(box[2], 0) - Math.min(box[0], 0);
  }

  private static double[] both(EarStory story, View view) {
    double[] a = DepthGrid.box(view.seen(story.before().shape().points(), story.mirror()));
    double[] b = DepthGrid.box(view.seen(story.after().shape().points(), story.mirror()));
    return new double[] {
      Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.max(a[2], b[2]), Math.max(a[3], b[3])
    };
  }

  private Page draw() {
    legend();
    double[] side = both(story, View.SIDE);
    double[] front = both(story, View.FRONT);
    double base = VIEW_TOP + factor * side[3];
    double sideLeft = Sheet.MARGIN + 4;
    page.label("From the side", sideLeft, 39, Sheet.TEXT.inBold());
    draw(View.SIDE, new AffineTransform(factor, 0, 0, -factor, sideLeft - factor * side[0], base));
    scaleBar(sideLeft, VIEW_TOP + factor * (side[3] - side[1]) + 5);
    double frontLeft = sideLeft + 92 + 14;
    page.label("From the front", frontLeft, 39, Sheet.TEXT.inBold());
    double zero = frontLeft - factor * Math.min(front[0], 0);
    mastoid(zero, base, front);
    levels(frontLeft - 2, base, frontWidth(front));
    draw(View.FRONT, new AffineTransform(factor, 0, 0, -factor, zero, base));
    double[] now = DepthGrid.box(View.FRONT.seen(story.after().shape().points(), story.mirror()));
    double top = base - factor * now[3];
    new ShowChart(page, story, frontLeft + 78 + 18, top, base - factor * now[1]).draw();
    return page;
  }

  private void draw(View view, AffineTransform place) {
    EarOutline after = new EarOutline(story.after().shape(), view, story.mirror());
    double[] corner = {after.left(), after.top()};
    place.transform(corner, 0, corner, 0, 1);
    BufferedImage shaded = after.shaded(SKIN_DARK, SKIN_LIGHT);
    page.raster(shaded, corner[0], corner[1], factor * DepthGrid.CELL_MM);
    page.line(place.createTransformedShape(after.contours()), CONTOUR);
    EarOutline before = new EarOutline(story.before().shape(), view, story.mirror());
    page.line(place.createTransformedShape(before.silhouette()), GHOST);
    landmark(after, "rim", view, place, RIM);
    landmark(after, "antihelix", view, place, CREST);
  }

  private void landmark(EarOutline seen, String name, View view, AffineTransform place, Pen pen) {
    Path2D path = seen.landmark(story.after().shape().line(name), view, story.mirror());
    page.line(place.createTransformedShape(path), pen);
  }

  private void mastoid(double zero, double base, double[] front) {
    double top = base - factor * front[3] - 3;
    double bottom = base - factor * front[1] + 3;
    page.line(zero, top, zero, bottom, new Pen(Ink.BLACK, 0.5));
    page.label("mastoid plane", zero, bottom + 4, Sheet.SMALL.in(Ink.GREY).centred());
  }

  private void levels(double left, double base, double width_mm) {
    for (Level level : Level.values()) {
      double height = EarCut.height_mm(story.after().shape(), level.heightPercent());
      double y = base - factor * height;
      page.line(left, y, left + factor * width_mm + 6, y, new Pen(Ink.PALE, 0.25, 1.2));
      Style style = Sheet.SMALL.in(Ink.GREY);
      boolean right = story.mirror() > 0;
      double x = right ? left + factor * width_mm + 7 : left - 1;
      page.label(level.key(), x, y + 1, right ? style : style.ending());
    }
  }

  private void scaleBar(double x, double y) {
    Pen pen = new Pen(Ink.BLACK, 0.4);
    page.line(x, y, x + 10 * factor, y, pen);
    page.line(x, y - 1, x, y + 1, pen);
    page.line(x + 10 * factor, y - 1, x + 10 * factor, y + 1, pen);
    String scale = String.format(Locale.ROOT, "10 mm; scale %s : 1", factor).replace(".0 ", " ");
    page.label(scale, x + 10 * factor + 3, y + 1, Sheet.SMALL.in(Ink.GREY));
  }

  private void legend() {
    double y = 14;
    double at = Sheet.WIDTH - Sheet.MARGIN - 132;
    page.line(at, y - 1, at + 8, y - 1, GHOST);
    page.label("before", at + 9.5, y, Sheet.SMALL);
    page.line(at + 24, y - 1, at + 32, y - 1, CONTOUR);
    page.label("after", at + 33.5, y, Sheet.SMALL);
    page.line(at + 45, y - 1, at + 53, y - 1, RIM);
    page.label("helical rim", at + 54.5, y, Sheet.SMALL);
    page.line(at + 75, y - 1, at + 83, y - 1, CREST);
    page.label("crest of the antihelix", at + 84.5, y, Sheet.SMALL);
    page.box(at + 115, y - 2.2, at + 121, y, SectionPanel.TARGET);
    page.label("target", at + 122.5, y, Sheet.SMALL);
  }
}
