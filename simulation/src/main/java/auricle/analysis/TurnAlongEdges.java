package auricle.analysis;

import auricle.mesh.Directors;
import auricle.mesh.Topology;
import java.util.List;
import java.util.Locale;

/**
 * Watches how far the surface turns along a single edge. Curvature is measured by sines of tilts,
 * which saturate: a pinched half sphere is off by about 0.6 % where an edge turns by 0.65 rad, by 1
 * to 3 % at 0.9 rad, and folds up like no shell would at 1.6 rad (measured on regular meshes of 24,
 * 16 and 8 divisions). A solution that turns too far along an edge is an equilibrium of the mesh,
 * not of the shell.
 */
final class TurnAlongEdges {
  /** Turn along an edge from which results are doubtful, rad. */
  static final double DOUBTFUL = 0.8;

  private final Topology topology;
  private final Directors directors;
  private double largest;
  private double loadFactor;
  private int edge;

  TurnAlongEdges(Topology topology, Directors directors) {
    this.topology = topology;
    this.directors = directors;
  }

  /** Looks at a state; the directors are those of that state. */
  void look(double[] u, double atLoadFactor) {
    double[] d = new double[6];
    for (int e = 0; e < topology.edgeCount(); e++) {
      directors.value(topology.edgeStart(e), u, d, 0);
      directors.value(topology.edgeEnd(e), u, d, 3);
      double turn = Math.acos(Math.max(-1, Math.min(1, d[0] * d[3] + d[1] * d[4] + d[2] * d[5])));
      if (turn > largest) {
        largest = turn;
        loadFactor = atLoadFactor;
        edge = e;
      }
    }
  }

  /** A remark if any state looked at is doubtful. */
  List<String> remarks() {
    if (largest <= DOUBTFUL) {
      return List.of();
    }
    return List.of(
        String.format(
            Locale.ROOT,
            "the mesh is too coarse: at load factor %.6g the surface turns by %.0f deg along one edge"
                + " (vertices %d and %d, counted from 0; at most %.0f deg is sound); refine it there, results are doubtful",
            loadFactor,
            Math.toDegrees(largest),
            topology.edgeStart(edge),
            topology.edgeEnd(edge),
            Math.toDegrees(DOUBTFUL)));
  }
}
