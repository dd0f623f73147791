package auricle.anatomy;

import auricle.mesh.Topology;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How the surface is sampled at a mesh level: columns by {@link ColumnPlaces} with their numbers of
 * rows, the floor as a disc, and the triangles that join them. It is laid out once, on the normal
 * shape, and serves every shape, so that vertices move smoothly with the shape and all auricles of
 * a level have the same triangles.
 */
final class MeshPlan {
  private final List<Column> columns = new ArrayList<>();
  private final FloorDisc floor;
  private final Topology topology;

  /**
   * A column.
   *
   * @param around its place
   * @param steps numbers of steps from foot to fold, to the end of the scapha, to the edge
   */
  private record Column(double around, List<Integer> steps) {}

  private MeshPlan(MeshLevel level) {
    AuricleSurface normal = new AuricleSurface(ShapeParameters.normalAdult());
    int division = level.division();
    ColumnPlaces places = ColumnPlaces.shipped();
    int count = places.count() * division;
    for (int i = 0; i < count; i++) {
      double around = places.around(i, count);
      columns.add(new Column(around, ColumnRows.steps(normal.slice(around), division)));
    }
    floor = new FloorDisc(places, division);
    topology = join(vertices(normal));
  }

  /** The plan of a level. */
  static MeshPlan of(MeshLevel level) {
    return switch (level) {
      case PLANNING -> Planning.PLAN;
      case FINE -> Fine.PLAN;
      case REFERENCE -> Reference.PLAN;
    };
  }

  /** The triangles. */
  Topology topology() {
    return topology;
  }

  /** The vertices on a surface: column by column from the foot outwards, then the floor. */
  MeshVertices vertices(AuricleSurface surface) {
    MeshVertices vertices = new MeshVertices();
    for (Column column : columns) {
      AuricleSurface.Slice slice = surface.slice(column.around());
      for (double across : ColumnRows.across(slice.section(), column.steps())) {
        vertices.add(column.around(), across, slice.section().point(across), slice.normal(across));
      }
    }
    floor.addVertices(surface, vertices);
    return vertices;
  }

  private Topology join(MeshVertices vertices) {
    List<int[]> triangles = new ArrayList<>();
    List<List<Integer>> lines = new ArrayList<>();
    int next = 0;
    for (Column column : columns) {
      List<Integer> line = new ArrayList<>();
      int rows = 1 + column.steps().stream().mapToInt(Integer::intValue).sum();
      for (int k = 0; k < rows; k++) {
        line.add(next++);
      }
      lines.add(line);
    }
    for (int i = 0; i < lines.size(); i++) {
      ColumnZip.join(vertices, lines.get(i), lines.get((i + 1) % lines.size()), triangles);
    }
    floor.join(lines.stream().map(l -> l.get(0)).toList(), next, triangles);
    int[] corners = triangles.stream().flatMapToInt(Arrays::stream).toArray();
    return new Topology(vertices.count(), corners);
  }

  private static final class Planning {
    private static final MeshPlan PLAN = new MeshPlan(MeshLevel.PLANNING);
  }

  private static final class Fine {
    private static final MeshPlan PLAN = new MeshPlan(MeshLevel.FINE);
  }

  private static final class Reference {
    private static final MeshPlan PLAN = new MeshPlan(MeshLevel.REFERENCE);
  }
}
