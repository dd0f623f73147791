package auricle.measurement;

import auricle.anatomy.Chart;
import auricle.anatomy.SurfaceSpot;
import auricle.geometry.TrianglePlace;
import auricle.geometry.Vectors;
import auricle.mesh.Topology;

/**
 * Reads the places of a plan from the coordinates of a mesh. A place is a point of the smooth
 * surface that the mesh samples, carried by the flat triangle under it: at rest it is read where it
 * is, whatever the mesh.
 */
final class SpotReader {
  private final int[] corners;
  private final double[] weights;
  private final double[] heights;

  /**
   * @param rest coordinates of the mesh at rest, mm
   * @param smooth the places on the smooth surface at rest, mm
   */
  SpotReader(SamplePlan plan, Chart chart, double[] rest, double[] smooth) {
    Topology topology = chart.topology();
    corners = new int[3 * plan.size()];
    weights = new double[3 * plan.size()];
    heights = new double[plan.size()];
    for (int i = 0; i < plan.size(); i++) {
      SurfaceSpot spot = chart.spot(plan.around(i), plan.across(i));
      for (int k = 0; k < 3; k++) {
        corners[3 * i + k] = 3 * topology.vertex(spot.triangle(), k);
      }
      place(i, rest, Vectors.at(smooth, 3 * i));
    }
  }

  private void place(int i, double[] rest, double[] point) {
    TrianglePlace place =
        TrianglePlace.of(corner(rest, i, 0), corner(rest, i, 1), corner(rest, i, 2), point);
    weights[3 * i] = 1 - place.weight1() - place.weight2();
    weights[3 * i + 1] = place.weight1();
    weights[3 * i + 2] = place.weight2();
    heights[i] = place.height();
  }

  private double[] corner(double[] coordinates, int i, int k) {
    return Vectors.at(coordinates, corners[3 * i + k]);
  }

  /**
   * x, y, z of every place, mm.
   *
   * @param coordinates x, y, z of each vertex, mm; what follows them is not read
   */
  double[] points(double[] coordinates) {
    double[] points = new double[corners.length];
    for (int i = 0; i < heights.length; i++) {
      double[] a = corner(coordinates, i, 0);
      double[] b = corner(coordinates, i, 1);
      double[] c = corner(coordinates, i, 2);
      double[] n = Vectors.cross(Vectors.subtract(b, a), Vectors.subtract(c, a));
      double h = heights[i] / Vectors.norm(n);
      for (int x = 0; x < 3; x++) {
        points[3 * i + x] =
            weights[3 * i] * a[x]
                + weights[3 * i + 1] * b[x]
                + weights[3 * i + 2] * c[x]
                + h * n[x];
      }
    }
    return points;
  }
}
