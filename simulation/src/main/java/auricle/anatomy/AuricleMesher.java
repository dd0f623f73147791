package auricle.anatomy;

import auricle.mesh.Topology;
import java.util.ArrayList;
import java.util.List;

/**
 * Samples the smooth surface: columns by {@link ColumnPlaces}, rows across by {@link ColumnRows},
 * joined like a zip, and the floor as a disc. Triangles run anticlockwise seen against the normals.
 */
final class AuricleMesher {
  private final AuricleSurface surface;
  private final int division;
  private final MeshVertices vertices = new MeshVertices();
  private final List<int[]> triangles = new ArrayList<>();

  AuricleMesher(AuricleSurface surface, MeshLevel level) {
    this.surface = surface;
    this.division = level.division();
  }

  /** Places the vertices and joins them. */
  AuricleMesher run() {
    List<List<Integer>> columns = new ArrayList<>();
    ColumnPlaces places = ColumnPlaces.shipped();
    int count = places.count() * division;
    for (int i = 0; i < count; i++) {
      columns.add(column(surface.slice(places.around(i, count))));
    }
    for (int i = 0; i < count; i++) {
      ColumnZip.join(vertices, columns.get(i), columns.get((i + 1) % count), true, triangles);
    }
    List<Integer> foot = columns.stream().map(c -> c.get(0)).toList();
    new FloorDisc(surface, division, vertices, triangles).fill(foot);
    return this;
  }

  private List<Integer> column(AuricleSurface.Slice slice) {
    List<Integer> column = new ArrayList<>();
    for (double across : ColumnRows.across(slice.section(), division)) {
      column.add(vertices.add(slice, across));
    }
    return column;
  }

  MeshVertices vertices() {
    return vertices;
  }

  Topology topology() {
    int[] corners = triangles.stream().flatMapToInt(java.util.Arrays::stream).toArray();
    return new Topology(vertices.count(), corners);
  }
}
