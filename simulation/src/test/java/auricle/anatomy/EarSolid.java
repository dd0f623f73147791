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
  private final double[] half;
  private final double[] tangents;
  private final List<Facet> facets = new ArrayList<>();

  EarSolid(ShellMesh mesh, double[] thickness) {
    this.x = mesh.positions();
    this.n = mesh.normals();
    this.topology = mesh.topology();
    this.half = java.util.Arrays.stream(thickness).map(t -> t / 2).toArray();
    this.tangents = tangents();
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
    return Vectors.add(Vectors.at(x, 3 * v), half[v], direction);
  }

  /** Directions along the boundary, boundary at the left of the surface, summed at its vertices. */
  private double[] tangents() {
    double[] sum = new double[x.length];
    for (int e = 0; e < topology.edgeCount(); e++) {
      int a = topology.leftTriangle(e) >= 0 ? topology.edgeStart(e) : topology.edgeEnd(e);
      int b = topology.edgeStart(e) + topology.edgeEnd(e) - a;
      for (int c = 0; c < 3 && topology.isBoundary(e); c++) {
        sum[3 * a + c] += x[3 * b + c] - x[3 * a + c];
        sum[3 * b + c] += x[3 * b + c] - x[3 * a + c];
      }
    }
    return sum;
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
    for (int k = 0; k < ROUND; k++) {
      double[][] d = new double[4][];
      int[] v = {a, b, a, b};
      for (int i = 0; i < 4; i++) {
        double[] out = Vectors.unit(Vectors.cross(Vectors.at(tangents, 3 * v[i]), normal(v[i])));
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
