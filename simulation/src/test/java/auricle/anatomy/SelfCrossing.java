package auricle.anatomy;

import auricle.geometry.Vectors;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.ArrayList;
import java.util.List;

/** Edges of a mesh that pass through triangles with which they share no vertex. */
public final class SelfCrossing {
  private final double[] x;
  private final Topology topology;
  private final double[][] low;
  private final double[][] high;

  public SelfCrossing(ShellMesh mesh) {
    x = mesh.positions();
    topology = mesh.topology();
    low = new double[topology.triangleCount()][3];
    high = new double[topology.triangleCount()][3];
    for (int t = 0; t < topology.triangleCount(); t++) {
      for (int c = 0; c < 3; c++) {
        double[] v = {x(t, 0)[c], x(t, 1)[c], x(t, 2)[c]};
        low[t][c] = Math.min(v[0], Math.min(v[1], v[2]));
        high[t][c] = Math.max(v[0], Math.max(v[1], v[2]));
      }
    }
  }

  private double[] x(int t, int corner) {
    return Vectors.at(x, 3 * topology.vertex(t, corner));
  }

  /** Triangles that some edge passes through. */
  public List<Integer> triangles() {
    List<Integer> crossed = new ArrayList<>();
    for (int t = 0; t < topology.triangleCount(); t++) {
      boolean found = false;
      for (int e = 0; e < topology.edgeCount() && !found; e++) {
        found = apart(t, e) && near(t, e) && crosses(t, e);
      }
      if (found) {
        crossed.add(t);
      }
    }
    return crossed;
  }

  private boolean apart(int t, int e) {
    boolean apart = true;
    for (int i = 0; i < 3; i++) {
      int v = topology.vertex(t, i);
      apart &= v != topology.edgeStart(e) && v != topology.edgeEnd(e);
    }
    return apart;
  }

  private boolean near(int t, int e) {
    boolean near = true;
    for (int c = 0; c < 3 && near; c++) {
      double a = x[3 * topology.edgeStart(e) + c];
      double b = x[3 * topology.edgeEnd(e) + c];
      near = Math.min(a, b) <= high[t][c] && Math.max(a, b) >= low[t][c];
    }
    return near;
  }

  /** Signs of the volumes that an edge makes with a triangle (Möller and Trumbore 1997). */
  private boolean crosses(int t, int e) {
    double[] p = Vectors.at(x, 3 * topology.edgeStart(e));
    double[] d = Vectors.subtract(Vectors.at(x, 3 * topology.edgeEnd(e)), p);
    double[] u = Vectors.subtract(x(t, 1), x(t, 0));
    double[] v = Vectors.subtract(x(t, 2), x(t, 0));
    double[] h = Vectors.cross(d, v);
    double det = Vectors.dot(u, h);
    if (Math.abs(det) < 1e-12) {
      return false;
    }
    double[] s = Vectors.subtract(p, x(t, 0));
    double a = Vectors.dot(s, h) / det;
    double[] q = Vectors.cross(s, u);
    double b = Vectors.dot(d, q) / det;
    double along = Vectors.dot(v, q) / det;
    return a >= 0 && b >= 0 && a + b <= 1 && along >= 0 && along <= 1;
  }
}
