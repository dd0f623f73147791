package auricle.anatomy;

import auricle.geometry.Vectors;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;

/** What can be wrong with the mesh of an ear. */
public final class MeshFaults {
  private final double[] x;
  private final double[] n;
  private final Topology topology;

  public MeshFaults(ShellMesh mesh) {
    x = mesh.positions();
    n = mesh.normals();
    topology = mesh.topology();
  }

  /** Largest angle between the normals at the ends of an edge, rad. */
  public double greatestTurn() {
    double most = 0;
    for (int e = 0; e < topology.edgeCount(); e++) {
      double cos = Vectors.dot(normal(topology.edgeStart(e)), normal(topology.edgeEnd(e)));
      most = Math.max(most, Math.acos(Math.min(1, cos)));
    }
    return most;
  }

  /** Least cosine between a triangle and the normals at its corners. */
  public double leastFacing() {
    double least = 1;
    for (int t = 0; t < topology.triangleCount(); t++) {
      double[] p = point(topology.vertex(t, 0));
      double[] u = Vectors.subtract(point(topology.vertex(t, 1)), p);
      double[] v = Vectors.subtract(point(topology.vertex(t, 2)), p);
      double[] face = Vectors.unit(Vectors.cross(u, v));
      for (int i = 0; i < 3; i++) {
        least = Math.min(least, Vectors.dot(face, normal(topology.vertex(t, i))));
      }
    }
    return least;
  }

  /** Least distance of a vertex from the mastoid plane, mm. */
  public double leastClearance() {
    double least = Double.POSITIVE_INFINITY;
    for (int v = 0; v < topology.vertexCount(); v++) {
      least = Math.min(least, x[3 * v]);
    }
    return least;
  }

  private double[] point(int v) {
    return Vectors.at(x, 3 * v);
  }

  private double[] normal(int v) {
    return Vectors.at(n, 3 * v);
  }
}
