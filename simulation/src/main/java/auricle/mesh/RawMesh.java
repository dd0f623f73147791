package auricle.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A mesh as a file gives it, with nothing checked: any coordinate may be NaN, any corner may name a
 * vertex that is not there. {@link MeshImport} makes a {@link ShellMesh} of it or says why not.
 */
public final class RawMesh {
  private final double[] positions;
  private final int[] corners;
  private final int[] faceStart;
  private final int firstNumber;
  private final Map<String, List<Integer>> groups;

  private RawMesh(Builder b) {
    this.positions = Arrays.copyOf(b.positions, 3 * b.vertices);
    this.corners = Arrays.copyOf(b.corners, b.faceStart[b.faces]);
    this.faceStart = Arrays.copyOf(b.faceStart, b.faces + 1);
    this.firstNumber = b.firstNumber;
    this.groups = Collections.unmodifiableMap(b.groups);
  }

  /**
   * Starts a mesh.
   *
   * @param firstNumber number that the file gives its first vertex and face, for findings
   */
  public static Builder builder(int firstNumber) {
    return new Builder(firstNumber);
  }

  /** Number of vertices. */
  public int vertexCount() {
    return positions.length / 3;
  }

  /** Number of faces, of any number of corners. */
  public int faceCount() {
    return faceStart.length - 1;
  }

  /** Coordinate c (0, 1, 2) of a vertex, mm. */
  public double position(int vertex, int c) {
    return positions[3 * vertex + c];
  }

  /** A copy of all coordinates, three a vertex, mm. */
  public double[] positions() {
    return positions.clone();
  }

  /** Number of corners of a face. */
  public int cornerCount(int face) {
    return faceStart[face + 1] - faceStart[face];
  }

  /** Vertex at a corner of a face, counted from 0 here whatever the file does. */
  public int corner(int face, int corner) {
    return corners[faceStart[face] + corner];
  }

  /** Faces of each named group, ascending. */
  public Map<String, List<Integer>> groups() {
    return groups;
  }

  /** The file's own number of a vertex or face. */
  public int number(int index) {
    return index + firstNumber;
  }

  /** Gathers a mesh; grows with what is really added, never ahead of it. */
  public static final class Builder {
    private final int firstNumber;
    private double[] positions = new double[96];
    private int[] corners = new int[96];
    private int[] faceStart = new int[32];
    private int vertices;
    private int faces;
    private final Map<String, List<Integer>> groups = new TreeMap<>();

    private Builder(int firstNumber) {
      this.firstNumber = firstNumber;
    }

    /** Adds a vertex, mm. */
    public void vertex(double x, double y, double z) {
      if (3 * vertices + 3 > positions.length) {
        positions = Arrays.copyOf(positions, 2 * positions.length);
      }
      positions[3 * vertices] = x;
      positions[3 * vertices + 1] = y;
      positions[3 * vertices + 2] = z;
      vertices++;
    }

    /** Adds a face by its vertices, counted from 0. */
    public void face(int... vertex) {
      int from = faceStart[faces];
      while (from + vertex.length > corners.length) {
        corners = Arrays.copyOf(corners, 2 * corners.length);
      }
      System.arraycopy(vertex, 0, corners, from, vertex.length);
      faces++;
      if (faces == faceStart.length) {
        faceStart = Arrays.copyOf(faceStart, 2 * faceStart.length);
      }
      faceStart[faces] = from + vertex.length;
    }

    /** Puts the face added last into a group. */
    public void group(String name) {
      groups.computeIfAbsent(name, n -> new ArrayList<>()).add(faces - 1);
    }

    /** Vertices so far. */
    public int vertexCount() {
      return vertices;
    }

    /** Faces so far. */
    public int faceCount() {
      return faces;
    }

    /** The mesh. */
    public RawMesh build() {
      return new RawMesh(this);
    }
  }
}
