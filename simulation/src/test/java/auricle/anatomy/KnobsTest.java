package auricle.anatomy;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

class KnobsTest {
  private static final int STEPS = 5;

  private static double helixMastoid(Auricle ear, Level level) {
    Chart chart = ear.chart();
    double around = chart.aroundOfRimAtHeight(level.heightPercent());
    SurfaceSpot rim = chart.spot(around, chart.acrossOfRim(around));
    return rim.position(ear.mesh().topology(), ear.mesh().positions())[0];
  }

  private static double span(Auricle ear, int c) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int v = 0; v < ear.mesh().vertexCount(); v++) {
      low = Math.min(low, ear.mesh().position(v, c));
      high = Math.max(high, ear.mesh().position(v, c));
    }
    return high - low;
  }

  private static double fold(Auricle ear) {
    Chart chart = ear.chart();
    double around = chart.aroundAtHeight(50);
    return chart.spot(around, Chart.FOLD)
        .position(ear.mesh().topology(), ear.mesh().positions())[0];
  }

  /** Least step of a reading over a knob's range, the steps being even. */
  private static double leastRise(
      ShapeKnob knob, double from, double to, ToDoubleFunction<Auricle> f) {
    double least = Double.POSITIVE_INFINITY;
    double last = Double.NaN;
    for (int i = 0; i <= STEPS; i++) {
      double value = from + (to - from) * i / STEPS;
      ShapeParameters shape = ShapeParameters.normalAdult().with(knob, value);
      double reading = f.applyAsDouble(Auricle.of(shape, MeshLevel.PLANNING));
      least = i == 0 ? least : Math.min(least, reading - last);
      last = reading;
    }
    return least;
  }

  private static void rises(ShapeKnob knob, double least, ToDoubleFunction<Auricle> reading) {
    double rise = leastRise(knob, knob.low(), knob.high(), reading);
    assertTrue(rise > least, knob + " raises its reading by " + rise);
  }

  @Test
  void heightAndWidthRiseWithTheirKnobs() {
    rises(ShapeKnob.HEIGHT, 3, e -> span(e, 2));
    rises(ShapeKnob.WIDTH, 1.5, e -> span(e, 1));
  }

  @Test
  void theBowlDeepensWithItsKnob() {
    rises(ShapeKnob.BOWL_DEPTH, 2, KnobsTest::fold);
  }

  @Test
  void everyThirdStandsOutWithItsLean() {
    assertTrue(leastRise(ShapeKnob.LEAN_UPPER, 20, 70, e -> helixMastoid(e, Level.UPPER)) > 0.5);
    assertTrue(leastRise(ShapeKnob.LEAN_MIDDLE, 25, 70, e -> helixMastoid(e, Level.MIDDLE)) > 0.4);
    assertTrue(leastRise(ShapeKnob.LEAN_LOWER, 25, 70, e -> helixMastoid(e, Level.LOWER)) > 0.3);
    assertTrue(
        leastRise(ShapeKnob.LOBULE_SLOPE, -15, 45, e -> helixMastoid(e, Level.LOBULE)) > 0.3);
  }

  @Test
  void anOpenFoldStandsOut() {
    assertTrue(leastRise(ShapeKnob.FOLD_UPPER, 80, 150, e -> helixMastoid(e, Level.UPPER)) > 0.4);
    assertTrue(leastRise(ShapeKnob.FOLD_MIDDLE, 80, 150, e -> helixMastoid(e, Level.MIDDLE)) > 0.4);
  }
}
