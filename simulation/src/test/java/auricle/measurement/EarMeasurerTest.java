package auricle.measurement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.Auricle;
import auricle.anatomy.MeshLevel;
import auricle.anatomy.ShapeParameters;
import auricle.testing.Check;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class EarMeasurerTest {
  private static final Set<Figure> UNEVEN =
      Set.of(
          Figure.RIM_SMALLEST_RADIUS,
          Figure.RIM_KINKS,
          Figure.FOLD_SMALLEST_RADIUS,
          Figure.FOLD_KINKS);
  private static final Auricle EAR = Auricle.of(ShapeParameters.normalAdult(), MeshLevel.PLANNING);
  private static final EarMeasurer MEASURER = new EarMeasurer(EAR);

  @Test
  void anEarThatStandsFurtherOutIsFurtherOutAtEveryLevel() {
    Measures before = MEASURER.measure(EAR.mesh().unknowns());
    double[] moved = EAR.mesh().unknowns();
    for (int v = 0; v < EAR.mesh().vertexCount(); v++) {
      moved[3 * v] += 2;
    }
    Measures after = MEASURER.measure(moved);
    for (Figure figure : List.of(Figure.values()).subList(0, 4)) {
      Check.close(figure.of(after) - figure.of(before), 2, 1e-9, "moved by 2 mm");
    }
    for (Figure figure : List.of(Figure.FOLD_ANGLE_UPPER, Figure.BOWL_DEPTH, Figure.WIDTH)) {
      Check.within(1e-9, figure.of(after), figure.of(before), "a shape is the same anywhere");
    }
  }

  @Test
  void anEarTurnedAboutAVerticalLineKeepsItsFoldAndTurnsItsAuriculocephalicAngle() {
    Measures before = MEASURER.measure(EAR.mesh().unknowns());
    Measures after = MEASURER.measure(turned(Math.toRadians(10)));
    Check.close(
        after.foldAngleMiddle_deg(), before.foldAngleMiddle_deg(), 0.5, "a turn bends nothing");
    Check.close(after.foldAngleUpper_deg(), before.foldAngleUpper_deg(), 2, "a turn bends nothing");
    Check.close(
        after.auriculocephalicAngle_deg() - before.auriculocephalicAngle_deg(),
        10,
        0.5,
        "turned by 10 deg; the most lateral point moves a little on the curl");
    assertTrue(after.helicalShowMiddle_mm() > before.helicalShowMiddle_mm());
  }

  @Test
  void theLegsThatAreToldMakeTheAngleThatIsTold() {
    double[] ear = turned(Math.toRadians(10));
    Measures measures = MEASURER.measure(ear);
    List<SightLine> lines = MEASURER.sightLines(ear);
    Check.close(
        angle_deg(lines.get(0), lines.get(1)),
        measures.foldAngleUpper_deg(),
        1e-9,
        "the angle between the legs in the cut across the fold, by its definition");
    Check.close(
        angle_deg(lines.get(2), lines.get(3)),
        measures.foldAngleMiddle_deg(),
        1e-9,
        "the angle between the legs in the cut across the fold, by its definition");
  }

  private static double angle_deg(SightLine wall, SightLine scapha) {
    double y =
        scapha.from().anterior_mm()
            + scapha.to().anterior_mm()
            - wall.from().anterior_mm()
            - wall.to().anterior_mm();
    double z =
        scapha.from().superior_mm()
            + scapha.to().superior_mm()
            - wall.from().superior_mm()
            - wall.to().superior_mm();
    return 180 - Math.toDegrees(slope(wall, y, z) - slope(scapha, y, z));
  }

  private static double slope(SightLine leg, double y, double z) {
    double dy = leg.to().anterior_mm() - leg.from().anterior_mm();
    double dz = leg.to().superior_mm() - leg.from().superior_mm();
    double flat = (dy * y + dz * z) / Math.hypot(y, z);
    return Math.atan2(leg.to().lateral_mm() - leg.from().lateral_mm(), flat);
  }

  @Test
  void aHelixPushedBehindTheAntihelixIsHidden() {
    double[] pushed = EAR.mesh().unknowns();
    for (int v = 0; v < EAR.mesh().vertexCount(); v++) {
      pushed[3 * v] -= 40 * Math.max(0, EAR.chart().across(v) - 0.6);
    }
    Measures hidden = MEASURER.measure(pushed);
    assertTrue(hidden.helicalShowMiddle_mm() < 0);
    assertTrue(hidden.hiddenHelixLength_mm() > 25);
    assertTrue(MEASURER.measure(EAR.mesh().unknowns()).hiddenHelixLength_mm() < 0.01);
  }

  @Test
  void everyFigureIsSmoothInTheCoordinates() {
    Random random = new Random(7);
    double[] u = EAR.mesh().unknowns();
    double[] way = random.doubles(u.length, -1, 1).toArray();
    for (Figure figure : Figure.values()) {
      if (!UNEVEN.contains(figure)) {
        double coarse = rate(figure, u, way, 1e-4);
        double fine = rate(figure, u, way, 1e-5);
        Check.close(coarse, fine, 1e-3, Math.max(1, Math.abs(fine)), "differences of two steps");
      }
    }
  }

  @Test
  void figuresAreNamedOnceAndFoundByTheirKeys() {
    List<NamedValue> figures = MEASURER.measure(EAR.mesh().unknowns()).figures();
    assertEquals(figures.size(), figures.stream().map(NamedValue::key).distinct().count());
    for (NamedValue value : figures) {
      assertEquals(value.label(), Figure.ofKey(value.key()).orElseThrow().label());
      assertTrue(value.unit().isEmpty() || value.key().endsWith("_" + value.unit()));
    }
  }

  private static double rate(Figure figure, double[] u, double[] way, double step) {
    return (figure.of(MEASURER.measure(moved(u, way, step)))
            - figure.of(MEASURER.measure(moved(u, way, -step))))
        / (2 * step);
  }

  private static double[] moved(double[] u, double[] way, double step) {
    double[] moved = u.clone();
    for (int i = 0; i < u.length; i++) {
      moved[i] += step * way[i];
    }
    return moved;
  }

  /** The ear turned outwards about a vertical line through the front of its base. */
  private static double[] turned(double angle) {
    double[] u = EAR.mesh().unknowns();
    for (int v = 0; v < EAR.mesh().vertexCount(); v++) {
      double x = u[3 * v] - 2;
      double y = u[3 * v + 1] - 8.3;
      u[3 * v] = 2 + x * Math.cos(angle) - y * Math.sin(angle);
      u[3 * v + 1] = 8.3 + x * Math.sin(angle) + y * Math.cos(angle);
    }
    return u;
  }
}
