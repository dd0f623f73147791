package auricle.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A shape of the ear with its fields, in plain numbers for drawing and files. Immutable: every
 * array handed out is a copy.
 *
 * <p>Right ear, mm: lateral, anterior, superior. Normals point to the anterior, visible face; the
 * two faces lie half a thickness along them.
 */
public final class DeformedEar {
  /** A number at every vertex. */
  public enum Field {
    /** Greatest magnitude of a principal strain on either face of the cartilage, from its rest. */
    STRAIN("strain", "1"),
    /**
     * The part of the strain that carries nothing any more, relaxed or grown into: greatest
     * magnitude of a principal value on either face of the cartilage; 0 during the operation.
     */
    SETTLED_STRAIN("settled_strain", "1"),
    /**
     * Greatest magnitude of a principal stress on either face of the cartilage: of what is left of
     * it at this moment.
     */
    STRESS("stress", "MPa"),
    /** Distance from the ear before the plan. */
    DISPLACEMENT("displacement", "mm"),
    /** Distance from the state before this step; after the operation from its end. */
    STEP_CHANGE("change_in_step", "mm");

    private final String key;
    private final String unit;

    Field(String key, String unit) {
      this.key = key;
      this.unit = unit;
    }

    /** Name in files. */
    public String key() {
      return key;
    }

    /** Its unit; "1" if none. */
    public String unit() {
      return unit;
    }
  }

  private final float[] points;
  private final float[] normals;
  private final float[] thickness;
  private final int[] triangles;
  private final float[][] fields;
  private final Map<String, List<Position>> lines;

  /**
   * @param points three coordinates a vertex, mm
   * @param normals unit normals, three numbers a vertex
   * @param thickness of the whole wall at each vertex, mm
   * @param triangles three vertices a triangle, anticlockwise seen against the normal
   * @param fields one row for each {@link Field} in order, one number a vertex
   * @param lines named landmark lines on the mid-surface in the present shape ("rim", "fold", …),
   *     and the straight ones along which angles are read, by the names of the measurement
   * @throws IllegalArgumentException if lengths do not match
   */
  public DeformedEar(
      float[] points,
      float[] normals,
      float[] thickness,
      int[] triangles,
      float[][] fields,
      Map<String, List<Position>> lines) {
    boolean match = points.length == 3 * thickness.length && normals.length == points.length;
    if (!match || fields.length != Field.values().length) {
      throw new IllegalArgumentException("a number for every vertex is needed");
    }
    this.points = points.clone();
    this.normals = normals.clone();
    this.thickness = thickness.clone();
    this.triangles = triangles.clone();
    this.fields = new float[fields.length][];
    for (int f = 0; f < fields.length; f++) {
      this.fields[f] = fields[f].clone();
    }
    this.lines = new TreeMap<>();
    lines.forEach((name, line) -> this.lines.put(name, List.copyOf(line)));
  }

  /** The same wall and fields in another shape. */
  DeformedEar at(float[] elsewhere, float[] turned, Map<String, List<Position>> moved) {
    return new DeformedEar(elsewhere, turned, thickness, triangles, fields, moved);
  }

  /** Number of vertices. */
  public int vertexCount() {
    return thickness.length;
  }

  /** Number of triangles. */
  public int triangleCount() {
    return triangles.length / 3;
  }

  /** A vertex. */
  public Position point(int vertex) {
    return new Position(points[3 * vertex], points[3 * vertex + 1], points[3 * vertex + 2]);
  }

  /** Vertex at a corner (0, 1, 2) of a triangle. */
  public int corner(int triangle, int corner) {
    return triangles[3 * triangle + corner];
  }

  /** Names of the landmark lines, ascending. */
  public List<String> lineNames() {
    return new ArrayList<>(lines.keySet());
  }

  /** A landmark line in the present shape; empty if there is none of that name. */
  public List<Position> line(String name) {
    return lines.getOrDefault(name, List.of());
  }

  /** Coordinates, three a vertex, mm. */
  public float[] points() {
    return points.clone();
  }

  /** Unit normals, three numbers a vertex. */
  public float[] normals() {
    return normals.clone();
  }

  /** Thickness of the wall at each vertex, mm. */
  public float[] thickness() {
    return thickness.clone();
  }

  /** Vertices of the triangles, three each. */
  public int[] triangles() {
    return triangles.clone();
  }

  /** A field, one number a vertex. */
  public float[] field(Field field) {
    return fields[field.ordinal()].clone();
  }
}
