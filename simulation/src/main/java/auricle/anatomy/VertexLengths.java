package auricle.anatomy;

import java.util.HashMap;
import java.util.Map;

/** Arc lengths along the profiles at all vertices of a mesh, from the fold and from the edge. */
final class VertexLengths {
  private final double[] offset;
  private final double[] edge;

  VertexLengths(AuricleSurface surface, MeshVertices vertices) {
    offset = new double[vertices.count()];
    edge = new double[vertices.count()];
    Map<Double, ProfileLengths> columns = new HashMap<>();
    for (int v = 0; v < vertices.count(); v++) {
      ProfileLengths lengths =
          columns.computeIfAbsent(vertices.around(v), a -> new ProfileLengths(surface.section(a)));
      offset[v] = lengths.offset(vertices.across(v));
      edge[v] = lengths.offset(1) - offset[v];
    }
  }

  /** From the fold line to a vertex, positive towards the rim, mm. */
  double offset(int vertex) {
    return offset[vertex];
  }

  /** From a vertex to the free edge, mm. */
  double toEdge(int vertex) {
    return edge[vertex];
  }
}
