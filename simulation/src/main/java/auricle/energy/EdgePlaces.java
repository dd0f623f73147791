package auricle.energy;

import auricle.mesh.Topology;

/** Where an edge stands in its triangles, and their edges in its {@link EdgeDomain}. */
final class EdgePlaces {
  private EdgePlaces() {}

  /** Number of an edge in a triangle, which is that of the corner opposite to it. */
  static int corner(Topology topology, int triangle, int edge) {
    for (int k = 0; k < 2; k++) {
      if (topology.edge(triangle, k) == edge) {
        return k;
      }
    }
    return 2;
  }

  /** Where the triangle's edges 0, 1, 2 stand among the local edges of the domain. */
  static int[] localEdges(int side, int sign, int k) {
    int[] local = new int[3];
    local[k] = 0;
    // the triangle's edge after k starts where edge k ends
    int fromEnd = side == 0 ? 1 : 4;
    int fromStart = side == 0 ? 2 : 3;
    local[(k + 1) % 3] = sign > 0 ? fromEnd : fromStart;
    local[(k + 2) % 3] = sign > 0 ? fromStart : fromEnd;
    return local;
  }
}
