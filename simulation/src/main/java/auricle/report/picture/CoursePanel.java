package auricle.report.picture;

import auricle.healing.Timeline;
import auricle.measurement.Figure;
import auricle.plan.Range;
import auricle.report.drawing.Ink;
import auricle.report.drawing.Page;
import auricle.report.drawing.Pen;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One figure over time; the scale of time is logarithmic, so that days and months both show. */
final class CoursePanel {
  static final Ink BAND = Ink.BLUE.withOpacity(0.2);

  private final Page page;
  private final Figure figure;
  private final EarStory story;
  private final List<CoursePoint> points;
  private final double left;
  private final double top;
  private final double width;
  private final double height;

  CoursePanel(
      Page page,
      Figure figure,
      EarStory story,
      List<CoursePoint> points,
      double left,
      double top,
      double width,
      double height) {
    this.page = page;
    this.figure = figure;
    this.story = story;
    this.points = points;
    this.left = left;
    this.top = top + 10;
    this.width = width;
    this.height = height;
  }

  void draw(@Nullable Range target) {
    double before = figure.of(story.before().measures());
    Axis axis = axis(before, target);
    String label = figure.label() + ", " + figure.unit();
    page.label(Words.capital(label), left, top - 6.5, Sheet.TEXT.inBold());
    loss(before);
    if (target != null) {
      page.box(
          left, axis.at(target.low()), left + width, axis.at(target.high()), SectionPanel.TARGET);
    }
    axes(axis);
    page.line(left, axis.at(before), left + width, axis.at(before), SectionPanel.BEFORE);
    band(axis);
    course(axis);
  }

  private Axis axis(double before, @Nullable Range target) {
    List<Double> values = new ArrayList<>(List.of(before));
    points.forEach(p -> values.add(figure.of(p.measures())));
    points.stream()
        .map(p -> p.spread().get(figure))
        .filter(java.util.Objects::nonNull)
        .forEach(s -> values.addAll(List.of(s.low(), s.high())));
    if (target != null) {
      values.addAll(List.of(target.low(), target.high()));
    }
    double low = values.stream().filter(Double::isFinite).min(Double::compare).orElse(0.0);
    double high = values.stream().filter(Double::isFinite).max(Double::compare).orElse(1.0);
    return new Axis(low, Math.max(high, low + 1), top + height, top);
  }

  private double x(double days) {
    double last = Math.max(1, points.get(points.size() - 1).days());
    return left + width * Math.log1p(Math.max(0, days)) / Math.log1p(last);
  }

  private void axes(Axis axis) {
    Pen grid = new Pen(Ink.PALE, 0.2);
    for (double tick : axis.ticks()) {
      page.line(left, axis.at(tick), left + width, axis.at(tick), grid);
      String text = Words.number(tick).replace(".0", "");
      page.label(text, left - 1.5, axis.at(tick) + 1, Sheet.SMALL.in(Ink.GREY).ending());
    }
    double free = Double.NEGATIVE_INFINITY;
    for (CoursePoint point : points) {
      double at = x(point.days());
      page.line(at, top + height, at, top + height + 1.2, new Pen(Ink.GREY, 0.25));
      double half = Page.width_mm(point.name(), Sheet.SMALL) / 2;
      if (at - half > free) {
        page.label(point.name(), at, top + height + 4.6, Sheet.SMALL.in(Ink.GREY).centred());
        free = at + half + 1;
      }
    }
    page.line(left, top + height, left + width, top + height, new Pen(Ink.GREY, 0.25));
  }

  private void band(Axis axis) {
    Path2D low = new Path2D.Double();
    List<double[]> back = new ArrayList<>();
    for (CoursePoint point : points) {
      CoursePoint.Spread spread = point.spread().get(figure);
      if (spread != null && Double.isFinite(spread.low()) && Double.isFinite(spread.high())) {
        to(low, x(point.days()), axis.at(spread.low()));
        back.add(new double[] {x(point.days()), axis.at(spread.high())});
      }
    }
    for (int i = back.size() - 1; i >= 0; i--) {
      to(low, back.get(i)[0], back.get(i)[1]);
    }
    if (!back.isEmpty()) {
      low.closePath();
      page.area(low, BAND);
    }
  }

  private static void to(Path2D path, double x, double y) {
    if (path.getCurrentPoint() == null) {
      path.moveTo(x, y);
    } else {
      path.lineTo(x, y);
    }
  }

  private void course(Axis axis) {
    Path2D line = new Path2D.Double();
    for (CoursePoint point : points) {
      double value = figure.of(point.measures());
      if (Double.isFinite(value)) {
        double x = x(point.days());
        double y = axis.at(value);
        to(line, x, y);
        page.area(new Ellipse2D.Double(x - 0.9, y - 0.9, 1.8, 1.8), Ink.BLUE);
      }
    }
    if (line.getCurrentPoint() != null) {
      page.line(line, new Pen(Ink.BLUE, 0.7));
    }
  }

  /** Before, tied and last value, and the share of the correction lost or gained by then. */
  private void loss(double before) {
    double tied = figure.of(points.get(0).measures());
    CoursePoint last = points.get(points.size() - 1);
    double now = figure.of(last.measures());
    String text =
        Words.number(before) + " → tied " + Words.number(tied) + " → " + Words.number(now);
    double lost = 100 * (now - tied) / (before - tied);
    if (Double.isFinite(lost) && before - tied >= Timeline.LEAST_CORRECTION_MM) {
      long share = Math.round(lost);
      text += "; " + Math.abs(share) + " % of the correction " + (share < 0 ? "gained" : "lost");
    }
    page.label(text, left, top - 2.2, Sheet.SMALL.in(Ink.GREY));
  }
}
