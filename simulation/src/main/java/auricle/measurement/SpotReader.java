package auricle.measurement;

import auricle.anatomy.Chart;
import auricle.anatomy.SurfaceSpot;
import auricle.mesh.Topology;

/** Reads the places of a plan from the coordinates of a mesh, by weights that are found once. */
final class SpotReader {
  private final int[] corners;
  private final double[] weights;

  SpotReader(SamplePlan plan, Chart chart) {
    Topology topology = chart.topology();
    corners = new int[3 * plan.size()];
    weights = new double[3 * plan.size()];
    for (int i = 0; i < plan.size(); i++) {
      SurfaceSpot spot = chart.spot(plan.around(i), plan.across(i));
      for (int k = 0; k < 3; k++) {
        corners[3 * i + k] = 3 * topology.vertex(spot.triangle(), k);
        weights[3 * i + k] = spot.weight(k);
      }
    }
  }

  /**
   * x, y, z of every place, mm.
   *
   * @param coordinates x, y, z of each vertex, mm; what follows them is not read
   */
  double[] points(double[] coordinates) {
    double[] points = new double[corners.length];
    for (int i = 0; i < corners.length; i += 3) {
      for (int c = 0; c < 3; c++) {
        points[i + c] =
            weights[i] * coordinates[corners[i] + c]
                + weights[i + 1] * coordinates[corners[i + 1] + c]
                + weights[i + 2] * coordinates[corners[i + 2] + c];
      }
    }
    return points;
  }
}
