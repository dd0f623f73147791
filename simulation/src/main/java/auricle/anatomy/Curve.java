package auricle.anatomy;

import auricle.mesh.Topology;
import java.util.List;

/**
 * A landmark curve on the surface, as points that move with it.
 *
 * @param name what it is
 * @param spots its points in order
 * @param around chart coordinate of each point
 */
public record Curve(String name, List<SurfaceSpot> spots, List<Double> around) {
  /** Copies the lists. */
  public Curve {
    spots = List.copyOf(spots);
    around = List.copyOf(around);
  }

  /** Coordinates of all points, three a point, mm. */
  public double[] points(Topology topology, double[] coordinates) {
    double[] points = new double[3 * spots.size()];
    for (int i = 0; i < spots.size(); i++) {
      System.arraycopy(spots.get(i).position(topology, coordinates), 0, points, 3 * i, 3);
    }
    return points;
  }
}
