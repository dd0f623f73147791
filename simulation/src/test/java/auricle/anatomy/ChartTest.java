package auricle.anatomy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.geometry.Vectors;
import auricle.mesh.Topology;
import auricle.testing.Check;
import org.junit.jupiter.api.Test;

class ChartTest {
  private static final Auricle EAR = Auricle.of(ShapeParameters.normalAdult(), MeshLevel.FINE);
  private static final Chart CHART = EAR.chart();
  private static final Topology TOPOLOGY = EAR.mesh().topology();
  private static final double[] X = EAR.mesh().positions();

  private static double[] at(SurfaceSpot spot) {
    return spot.position(TOPOLOGY, X);
  }

  @Test
  void theSpotAtAVertexsPlaceIsTheVertex() {
    for (int v = 0; v < EAR.mesh().vertexCount(); v++) {
      double[] p = at(CHART.spot(CHART.around(v), CHART.across(v)));
      double gap = Vectors.norm(Vectors.subtract(p, Vectors.at(X, 3 * v)));
      assertTrue(gap < 1e-6, "vertex " + v + ": " + gap);
    }
  }

  @Test
  void theFoldLineHasTheHeightThatIsAskedFor() {
    double low = CHART.lowest_mm();
    double span = CHART.highest_mm() - low;
    for (double percent = 35; percent <= 85; percent += 5) {
      double[] p = at(CHART.spot(CHART.aroundAtHeight(percent), Chart.FOLD));
      String source = "height along z as a share, by definition";
      Check.close(100 * (p[2] - low) / span, percent, 0.3, source);
    }
  }

  @Test
  void offsetsFromTheFoldAreArcLengths() {
    double around = CHART.aroundAtHeight(50);
    double sum = 0;
    double[] last = at(CHART.fromFold(around, 0));
    for (int i = 1; i <= 50; i++) {
      double[] next = at(CHART.fromFold(around, i * 0.1));
      sum += Vectors.norm(Vectors.subtract(next, last));
      last = next;
    }
    Check.close(sum, 5, 0.05, "arc length of a line of 5 mm, by definition");
    assertTrue(at(CHART.fromFold(around, 5))[1] < at(CHART.fromFold(around, -5))[1]);
  }

  @Test
  void trianglesKnowTheirPlace() {
    for (int t = 0; t < TOPOLOGY.triangleCount(); t++) {
      double offset = CHART.foldOffset_mm(t);
      Region region = EAR.region(t);
      boolean outer = region == Region.HELIX && CHART.aroundOf(t) < 1;
      assertTrue(!outer || offset > 0 || CHART.aroundOf(t) < 0.1, region + ": " + offset);
      assertTrue(region != Region.FLOOR || offset < 0);
      assertTrue(CHART.rimDistance_mm(t) > 0);
      assertTrue(CHART.heightPercent(t) > -1 && CHART.heightPercent(t) < 101);
    }
  }

  @Test
  void theFoldsDirectionRunsTowardsGreaterAround() {
    for (double around = 0.3; around < 0.9; around += 0.05) {
      SurfaceSpot spot = CHART.spot(around, Chart.FOLD + 0.01);
      double[] way =
          Vectors.subtract(
              at(CHART.spot(around + 0.005, Chart.FOLD + 0.01)),
              at(CHART.spot(around - 0.005, Chart.FOLD + 0.01)));
      double expected = TriangleDirection.angle(EAR.mesh(), spot.triangle(), way);
      double turn = CHART.foldDirection(spot.triangle()) - expected;
      assertEquals(0, Math.IEEEremainder(turn, 2 * Math.PI), 0.15, "around " + around);
    }
  }

  @Test
  void theRimRunsWithoutAJumpIntoTheEdgeOfTheLobule() {
    double[] rim = CHART.rim().points(TOPOLOGY, X);
    for (int i = 3; i < rim.length; i += 3) {
      double step = Vectors.norm(Vectors.subtract(Vectors.at(rim, i), Vectors.at(rim, i - 3)));
      assertTrue(step < 2, "point " + i / 3 + ": " + step);
    }
    assertEquals(1, CHART.acrossOfRim(0.95));
  }

  @Test
  void theBedIsOnTheHeadAndTheHelixIsFree() {
    for (int v : EAR.mesh().vertexSet(Auricle.ATTACHED).orElseThrow()) {
      double around = CHART.around(v);
      boolean front = around < 0.05 || around > 1;
      assertTrue(front || CHART.across(v) <= Chart.FOOT, "around " + around);
      assertTrue(X[3 * v] < 11, "attached vertex at " + X[3 * v]);
    }
  }
}
