package auricle.anatomy;

import auricle.geometry.Vectors;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.ArrayList;
import java.util.List;

/**
 * A mid-surface given a thickness for pictures: two faces and a round edge, as shaded triangles.
 */
final class EarSolid {
  /** Corners with positions and normals; nine numbers each. */
  record Facet(List<double[]> points, List<double[]> normals, int source) {}

  private static final int ROUND = 4;
  private final double[] x;
  private final double[] n;
  private final Topology topology;
  private final double half;
  private final List<Facet> facets = new ArrayList<>();

  EarSolid(ShellMesh mesh, double thickness) {
    this.x = mesh.positions();
    this.n = mesh.normals();
    this.topology = mesh.topology();
    this.half = thickness / 2;
    for (int t = 0; t < topology.triangleCount(); t++) {
      face(t, 1);
      face(t, -1);
    }
    for (int e = 0; e < topology.edgeCount(); e++) {
      if (topology.isBoundary(e)) {
        edge(e);
      }
    }
  }

  List<Facet> facets() {
    return facets;
  }

  private double[] normal(int v) {
    return Vectors.at(n, 3 * v);
  }

  private double[] off(int v, double[] direction) {
    return Vectors.add(Vectors.at(x, 3 * v), half, direction);
  }

  private void face(int t, int sign) {
    List<double[]> points = new ArrayList<>();
    List<double[]> normals = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      double[] normal = Vectors.scale(sign, normal(topology.vertex(t, i)));
      points.add(off(topology.vertex(t, i), normal));
      normals.add(normal);
    }
    facets.add(new Facet(points, normals, t));
  }

  private void edge(int e) {
    int t = Math.max(topology.leftTriangle(e), topology.rightTriangle(e));
    int a = topology.edgeStart(e);
    int b = topology.edgeEnd(e);
    int c = 0;
    while (topology.vertex(t, c) == a || topology.vertex(t, c) == b) {
      c++;
    }
    double[] along = Vectors.subtract(Vectors.at(x, 3 * b), Vectors.at(x, 3 * a));
    double[] in = Vectors.subtract(Vectors.at(x, 3 * topology.vertex(t, c)), Vectors.at(x, 3 * a));
    for (int k = 0; k < ROUND; k++) {
      double[][] d = new double[4][];
      int[] v = {a, b, a, b};
      for (int i = 0; i < 4; i++) {
        double[] out = Vectors.unit(Vectors.cross(along, normal(v[i])));
        out = Vectors.dot(out, in) > 0 ? Vectors.scale(-1, out) : out;
        double angle = Math.PI * (k + i / 2) / ROUND;
        d[i] = Vectors.add(Vectors.scale(Math.cos(angle), normal(v[i])), Math.sin(angle), out);
      }
      add(v, d, t, 0, 1, 2);
      add(v, d, t, 2, 1, 3);
    }
  }

  private void add(int[] v, double[][] d, int t, int... corners) {
    List<double[]> points = new ArrayList<>();
    List<double[]> normals = new ArrayList<>();
    for (int i : corners) {
      points.add(off(v[i], d[i]));
      normals.add(d[i]);
    }
    facets.add(new Facet(points, normals, t));
  }
}
