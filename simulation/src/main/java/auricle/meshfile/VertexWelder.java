package auricle.meshfile;

import auricle.mesh.RawMesh;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Gives points that lie within a distance of each other one vertex: the first of them. Cells of a
 * grid with that spacing are looked up with their neighbours, so that the place of the grid does
 * not matter.
 */
final class VertexWelder {
  private static final int[] NONE = {};

  private record Cell(long x, long y, long z) {}

  private final RawMesh.Builder mesh;
  private final double distance;
  private final Map<Cell, int[]> members = new HashMap<>();

  VertexWelder(RawMesh.Builder mesh, double distance) {
    this.mesh = mesh;
    this.distance = distance;
  }

  /** The vertex of a point, a new one if there is none near. */
  int vertex(double px, double py, double pz) {
    boolean finite = Double.isFinite(px + py + pz);
    Cell home = new Cell(cell(px), cell(py), cell(pz));
    int found = finite ? near(home, px, py, pz) : -1;
    return found >= 0 ? found : add(home, px, py, pz);
  }

  private long cell(double v) {
    return (long) Math.floor(v / distance);
  }

  private int near(Cell home, double px, double py, double pz) {
    int best = -1;
    for (int k = 0; k < 27; k++) {
      Cell cell = new Cell(home.x + k % 3 - 1, home.y + k / 3 % 3 - 1, home.z + k / 9 - 1);
      for (int v : members.getOrDefault(cell, NONE)) {
        double dx = mesh.position(v, 0) - px;
        double dy = mesh.position(v, 1) - py;
        double dz = mesh.position(v, 2) - pz;
        boolean close = dx * dx + dy * dy + dz * dz <= distance * distance;
        best = close && (best < 0 || v < best) ? v : best;
      }
    }
    return best;
  }

  private int add(Cell home, double px, double py, double pz) {
    int v = mesh.vertexCount();
    int[] before = members.getOrDefault(home, NONE);
    int[] all = Arrays.copyOf(before, before.length + 1);
    all[before.length] = v;
    members.put(home, all);
    mesh.vertex(px, py, pz);
    return v;
  }
}
