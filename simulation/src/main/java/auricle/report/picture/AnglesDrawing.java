package auricle.report.picture;

import auricle.anatomy.Level;
import auricle.measurement.Figure;
import auricle.rehearsal.Position;
import auricle.report.drawing.Ink;
import auricle.report.drawing.Page;
import auricle.report.drawing.Pen;
import auricle.report.drawing.Style;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * The lines along which angles are read, seen from above in a section: the legs of the
 * scapha-conchal angle, which is read across the fold and so aslant to the section, and at
 * mid-height the line of the auriculocephalic angle with the direction of the mastoid plane.
 */
final class AnglesDrawing {
  /** Legs are drawn longer than they are read, mm of the ear on either end. */
  private static final double BEYOND_MM = 1.5;

  private static final double LABEL_MM = 3.2;

  /** Share of the line over which the direction of the mastoid plane is drawn beside it. */
  private static final double BASE = 0.45;

  private final Page page;
  private final Level level;
  private final DoubleUnaryOperator x;
  private final DoubleUnaryOperator y;

  /**
   * @param x place on the page of an anterior coordinate, mm
   * @param y of a lateral one
   */
  AnglesDrawing(Page page, Level level, DoubleUnaryOperator x, DoubleUnaryOperator y) {
    this.page = page;
    this.level = level;
    this.x = x;
    this.y = y;
  }

  /** Draws the legs of one state, if the level has any. */
  void draw(Moment moment, Pen pen) {
    leg(wall(moment), pen);
    leg(scapha(moment), pen);
  }

  private List<Position> wall(Moment moment) {
    return moment.shape().line("wall_leg_" + level.key());
  }

  private List<Position> scapha(Moment moment) {
    return moment.shape().line("scapha_leg_" + level.key());
  }

  /** Writes the angle between the ends that face the fold, on its outer side. */
  void label(Moment moment, Ink ink) {
    if (wall(moment).isEmpty() || foldAngle().isEmpty()) {
      return;
    }
    Position inner = wall(moment).get(1);
    Position outer = scapha(moment).get(0);
    double across = x.applyAsDouble((inner.anterior_mm() + outer.anterior_mm()) / 2);
    double up = y.applyAsDouble(Math.max(inner.lateral_mm(), outer.lateral_mm())) - LABEL_MM;
    Style style = Sheet.SMALL.inBold().in(ink).centred().overLines();
    page.label(Words.number(foldAngle().get().of(moment.measures())) + "°", across, up, style);
  }

  /** Draws the auriculocephalic angle of one state, from the opening of the ear canal. */
  void drawStand(Moment moment, Pen pen) {
    List<Position> line = moment.shape().line("auriculocephalic");
    if (level != Level.MIDDLE || line.isEmpty()) {
      return;
    }
    Position canal = line.get(0);
    Position rim = line.get(1);
    double from = x.applyAsDouble(canal.anterior_mm());
    double base = y.applyAsDouble(canal.lateral_mm());
    double to = x.applyAsDouble(rim.anterior_mm());
    page.line(from, base, to, y.applyAsDouble(rim.lateral_mm()), pen);
    page.line(from, base, from + BASE * (to - from), base, pen);
    String deg = Words.number(Figure.AURICULOCEPHALIC_ANGLE.of(moment.measures())) + "°";
    Style style = Sheet.SMALL.inBold().in(pen.ink()).centred().overLines();
    page.label(deg, from + BASE * (to - from), base - 1, style);
  }

  private Optional<Figure> foldAngle() {
    return switch (level) {
      case UPPER -> Optional.of(Figure.FOLD_ANGLE_UPPER);
      case MIDDLE -> Optional.of(Figure.FOLD_ANGLE_MIDDLE);
      default -> Optional.empty();
    };
  }

  private void leg(List<Position> ends, Pen pen) {
    if (ends.isEmpty()) {
      return;
    }
    Position a = ends.get(0);
    Position b = ends.get(1);
    double dx = b.anterior_mm() - a.anterior_mm();
    double dy = b.lateral_mm() - a.lateral_mm();
    double more = BEYOND_MM / Math.max(1, Math.hypot(dx, dy));
    page.line(
        x.applyAsDouble(a.anterior_mm() - more * dx),
        y.applyAsDouble(a.lateral_mm() - more * dy),
        x.applyAsDouble(b.anterior_mm() + more * dx),
        y.applyAsDouble(b.lateral_mm() + more * dy),
        pen);
  }
}
