package auricle.analysis;

import auricle.geometry.PlateFrame;
import auricle.geometry.Vectors;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.stream.IntStream;

/** What vertices stand for: their share of the area, and the thickness around them. */
final class NodalShares {
  private final Topology topology;
  private final double[] positions;

  NodalShares(ShellMesh mesh) {
    this.topology = mesh.topology();
    this.positions = mesh.positions();
  }

  /** A third of the area of every triangle to each corner, mm², by vertex. */
  double[] areas() {
    return areas(IntStream.range(0, topology.triangleCount()).toArray());
  }

  /** The same of some triangles alone. */
  double[] areas(int[] triangles) {
    double[] areas = new double[topology.vertexCount()];
    for (int t : triangles) {
      double area = new PlateFrame(corner(t, 0), corner(t, 1), corner(t, 2)).area();
      for (int c = 0; c < 3; c++) {
        areas[topology.vertex(t, c)] += area / 3;
      }
    }
    return areas;
  }

  private double[] corner(int triangle, int c) {
    return Vectors.at(positions, 3 * topology.vertex(triangle, c));
  }

  /** Half the greatest thickness around every vertex, mm. */
  double[] halfThickness(SectionPlan sections) {
    double[] half = new double[topology.vertexCount()];
    for (int t = 0; t < topology.triangleCount(); t++) {
      for (int c = 0; c < 3; c++) {
        int v = topology.vertex(t, c);
        half[v] = Math.max(half[v], sections.section(t).thickness() / 2);
      }
    }
    return half;
  }
}
