package auricle.surgery;

import auricle.mesh.RestShape;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;

/**
 * The area with which each vertex of a bedded patch is bedded, mm²: a third of every triangle that
 * lies in the patch, and along the border of the patch, and where a line alone is bedded, a seam of
 * {@value #SEAM_MM} mm. The sum does not depend on how finely the sheet is meshed, which thirds of
 * all triangles that touch the patch would.
 */
public final class BeddedAreas {
  /**
   * How far tissue holds beyond a border, mm; our own choice, with which a normal ear stands on as
   * much area as it did when the bedding (material table {@code attachment}) was calibrated.
   */
  static final double SEAM_MM = 0.92;

  private final ShellMesh mesh;
  private final Set<Integer> bedded;
  private final double[] areas;

  private BeddedAreas(ShellMesh mesh, Collection<Integer> bedded) {
    this.mesh = mesh;
    this.bedded = new HashSet<>(bedded);
    areas = new double[mesh.vertexCount()];
  }

  /** Areas by vertex of the mesh; none for vertices that are not bedded. */
  public static double[] of(ShellMesh mesh, Collection<Integer> bedded) {
    BeddedAreas made = new BeddedAreas(mesh, bedded);
    made.addPatch();
    made.addSeam();
    return made.areas;
  }

  private void addPatch() {
    Topology topology = mesh.topology();
    RestShape rest = RestShape.of(topology, mesh.unknowns(), mesh.directors());
    for (int t = 0; t < topology.triangleCount(); t++) {
      for (int i = 0; i < 3 && inside(t); i++) {
        areas[topology.vertex(t, i)] += rest.plate(t).area() / 3;
      }
    }
  }

  private boolean inside(int triangle) {
    Topology topology = mesh.topology();
    return bedded.contains(topology.vertex(triangle, 0))
        && bedded.contains(topology.vertex(triangle, 1))
        && bedded.contains(topology.vertex(triangle, 2));
  }

  private void addSeam() {
    Topology topology = mesh.topology();
    boolean[] seam = new boolean[topology.edgeCount()];
    for (int t = 0; t < topology.triangleCount(); t++) {
      for (int i = 0; i < 3 && !inside(t); i++) {
        seam[topology.edge(t, i)] = true;
      }
    }
    for (int e = 0; e < seam.length; e++) {
      if (seam[e]) {
        addSeam(topology.edgeStart(e), topology.edgeEnd(e));
      }
    }
  }

  private void addSeam(int from, int to) {
    if (bedded.contains(from) && bedded.contains(to)) {
      double half = SEAM_MM * distance(from, to) / 2;
      areas[from] += half;
      areas[to] += half;
    }
  }

  private double distance(int from, int to) {
    double square = 0;
    for (int c = 0; c < 3; c++) {
      double d = mesh.position(to, c) - mesh.position(from, c);
      square += d * d;
    }
    return Math.sqrt(square);
  }
}
