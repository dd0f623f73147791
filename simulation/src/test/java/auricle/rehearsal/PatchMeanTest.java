package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.mesh.Topology;
import auricle.testing.Check;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Means over patches of a square of 8 mm, cut into equal triangles. */
class PatchMeanTest {
  private static final double SIDE_MM = 8;

  /** n by n squares, each of two triangles; triangles 2 (j n + i) and the next in column i. */
  private record Square(int n) {
    Topology topology() {
      int[] triangles = new int[6 * n * n];
      for (int s = 0; s < n * n; s++) {
        int a = s / n * (n + 1) + s % n;
        int[] corners = {a, a + 1, a + n + 2, a, a + n + 2, a + n + 1};
        System.arraycopy(corners, 0, triangles, 6 * s, 6);
      }
      return new Topology((n + 1) * (n + 1), triangles);
    }

    double[] positions() {
      double[] x = new double[3 * (n + 1) * (n + 1)];
      for (int v = 0; v < x.length / 3; v++) {
        x[3 * v] = SIDE_MM * (v % (n + 1)) / n;
        x[3 * v + 1] = SIDE_MM * (v / (n + 1)) / n;
      }
      return x;
    }

    PatchMean patches(IntPredicate within) {
      return new PatchMean(topology(), positions(), within);
    }

    int column(int triangle) {
      return triangle / 2 % n;
    }

    /** The triangle right above the middle of the square. */
    int middle() {
      return 2 * (n / 2 * n + n / 2);
    }

    /** One over the root of the distance of a triangle's centre from the middle. */
    double atTip(int triangle) {
      double h = SIDE_MM / n;
      double up = (triangle % 2 == 0 ? 1 : 2) / 3.0;
      double x = (column(triangle) + 1 - up) * h;
      double y = (triangle / 2 / n + up) * h;
      return 1 / Math.sqrt(Math.hypot(x - SIDE_MM / 2, y - SIDE_MM / 2));
    }
  }

  private static double about(
      PatchMean patches, int triangle, double area_mm2, IntToDoubleFunction field) {
    patches.grow(triangle, area_mm2);
    return patches.mean(field);
  }

  @Test
  void theMeanOfTheSameEverywhereIsThat() {
    PatchMean patches = new Square(8).patches(t -> true);
    for (int t : new int[] {0, 37, 127}) {
      assertEquals(3, about(patches, t, 5, any -> 3), 1e-12);
    }
  }

  @Test
  void aPatchWithinOneTriangleIsItsOwnValue() {
    PatchMean patches = new Square(8).patches(t -> true);
    assertEquals(37, about(patches, 37, 0.4, t -> t));
    assertEquals(37, about(patches, 37, 0.4, t -> t), "and again");
  }

  /** Half a mm² of the triangle itself, and a quarter more of its nearest neighbour. */
  @Test
  void ofTheLastTriangleItTakesWhatItLacks() {
    Square square = new Square(8);
    int t = square.middle();
    double mean = about(square.patches(any -> true), t, 0.75, o -> o == t ? 0 : 1);
    assertEquals(1 / 3.0, mean, 1e-12);
  }

  @Test
  void itGrowsOverNoTriangleThatIsOutside() {
    Square square = new Square(8);
    PatchMean left = square.patches(t -> square.column(t) < 4);
    assertEquals(1, about(left, 2 * (4 * 8 + 3), 6, t -> square.column(t) < 4 ? 1 : 100), 1e-12);
  }

  /** As at the end of a cut: without a bound at a point, but the mean over a disc has one. */
  @Test
  void whatHasNoBoundHasAMeanThatSettlesOnFinerMeshes() {
    double area = Math.PI * 1.5 * 1.5;
    double[] mean = new double[3];
    double[] most = new double[3];
    for (int k = 0; k < 3; k++) {
      Square square = new Square(16 << k);
      mean[k] = about(square.patches(t -> true), square.middle(), area, square::atTip);
      most[k] = square.atTip(square.middle());
    }
    assertTrue(most[2] > 1.3 * most[1], "the field itself rises on");
    double exact = 4 / 3.0 / Math.sqrt(1.5);
    Check.within(0.02, mean[2], exact, "closed form: mean of 1/√r over a disc, 4/(3 √R)");
    assertTrue(Math.abs(mean[2] - mean[1]) < 0.02 * exact, "from " + mean[1] + " to " + mean[2]);
  }
}
