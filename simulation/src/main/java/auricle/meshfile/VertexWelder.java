package auricle.meshfile;

import auricle.mesh.RawMesh;
import java.util.HashMap;
import java.util.Map;

/**
 * Gives points that lie within a distance of each other one vertex: the first of them. Cells of a
 * grid with that spacing are looked up with their neighbours, so that the place of the grid does
 * not matter.
 */
final class VertexWelder {
  private record Cell(long x, long y, long z) {}

  private final RawMesh.Builder mesh;
  private final double distance;
  private final Map<Cell, Integer> first = new HashMap<>();

  /** Next vertex in the same cell, or -1. */
  private int[] next = new int[64];

  private double[] x = new double[192];

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
      for (int v = first.getOrDefault(cell, -1); v >= 0; v = next[v]) {
        double dx = x[3 * v] - px;
        double dy = x[3 * v + 1] - py;
        double dz = x[3 * v + 2] - pz;
        boolean close = dx * dx + dy * dy + dz * dz <= distance * distance;
        best = close && (best < 0 || v < best) ? v : best;
      }
    }
    return best;
  }

  private int add(Cell home, double px, double py, double pz) {
    int v = mesh.vertexCount();
    if (v == next.length) {
      next = java.util.Arrays.copyOf(next, 2 * v);
      x = java.util.Arrays.copyOf(x, 6 * v);
    }
    x[3 * v] = px;
    x[3 * v + 1] = py;
    x[3 * v + 2] = pz;
    next[v] = first.getOrDefault(home, -1);
    first.put(home, v);
    mesh.vertex(px, py, pz);
    return v;
  }
}
