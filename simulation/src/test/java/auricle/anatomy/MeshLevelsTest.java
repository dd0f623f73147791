package auricle.anatomy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.geometry.Vectors;
import org.junit.jupiter.api.Test;

class MeshLevelsTest {
  private static final ShapeParameters SHAPE =
      ShapeParameters.normalAdult().with(ShapeKnob.FOLD_UPPER, 132).with(ShapeKnob.BOWL_DEPTH, 14);
  private static final Auricle PLANNING = Auricle.of(SHAPE, MeshLevel.PLANNING);
  private static final Auricle FINE = Auricle.of(SHAPE, MeshLevel.FINE);
  private static final Auricle REFERENCE = Auricle.of(SHAPE, MeshLevel.REFERENCE);

  @Test
  void eachLevelHasAboutFourTimesTheVertices() {
    int planning = PLANNING.mesh().vertexCount();
    assertEquals(4.0, FINE.mesh().vertexCount() / (double) planning, 0.2);
    assertEquals(16.0, REFERENCE.mesh().vertexCount() / (double) planning, 0.8);
  }

  @Test
  void allLevelsSampleOneSurface() {
    for (int v = 0; v < PLANNING.mesh().vertexCount(); v++) {
      Chart chart = PLANNING.chart();
      SurfaceSpot spot = REFERENCE.chart().spot(chart.around(v), chart.across(v));
      double[] there = spot.position(REFERENCE.mesh().topology(), REFERENCE.mesh().positions());
      double[] here = Vectors.at(PLANNING.mesh().positions(), 3 * v);
      double gap = Vectors.norm(Vectors.subtract(there, here));
      assertTrue(gap < 0.1, "vertex " + v + ": " + gap);
    }
  }

  @Test
  void theRimIsTheSameLineOnEveryLevel() {
    for (Level level : Level.values()) {
      double planning = helixMastoid(PLANNING, level);
      assertEquals(helixMastoid(FINE, level), planning, 0.1, level.key());
      assertEquals(helixMastoid(REFERENCE, level), planning, 0.15, level.key());
    }
  }

  private static double helixMastoid(Auricle ear, Level level) {
    Chart chart = ear.chart();
    double around = chart.aroundOfRimAtHeight(level.heightPercent());
    SurfaceSpot rim = chart.spot(around, chart.acrossOfRim(around));
    return rim.position(ear.mesh().topology(), ear.mesh().positions())[0];
  }
}
