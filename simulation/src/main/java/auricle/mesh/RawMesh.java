package auricle.mesh;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.util.ResizableDoubleArray;

/**
 * A mesh as a file gives it, with nothing checked: any coordinate may be NaN, any corner may name a
 * vertex that is not there. {@link MeshImport} makes a {@link ShellMesh} of it or says why not.
 */
public final class RawMesh {
  private final double[] positions;
  private final List<int[]> faces;
  private final int firstNumber;
  private final Map<String, List<Integer>> groups;

  private RawMesh(Builder b) {
    this.positions = b.positions.getElements();
    this.faces = List.copyOf(b.faces);
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
    return faces.size();
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
    return faces.get(face).length;
  }

  /** Vertex at a corner of a face, counted from 0 here whatever the file does. */
  public int corner(int face, int corner) {
    return faces.get(face)[corner];
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
    private final ResizableDoubleArray positions = new ResizableDoubleArray();
    private final List<int[]> faces = new ArrayList<>();
    private final Map<String, List<Integer>> groups = new TreeMap<>();

    private Builder(int firstNumber) {
      this.firstNumber = firstNumber;
    }

    /** Adds a vertex, mm. */
    public void vertex(double x, double y, double z) {
      // one by one: adding several at once copies the whole array each time
      positions.addElement(x);
      positions.addElement(y);
      positions.addElement(z);
    }

    /** Adds a face by its vertices, counted from 0. */
    public void face(int... vertices) {
      faces.add(vertices.clone());
    }

    /** Puts the face added last into a group. */
    public void group(String name) {
      groups.computeIfAbsent(name, n -> new ArrayList<>()).add(faces.size() - 1);
    }

    /** Vertices so far. */
    public int vertexCount() {
      return positions.getNumElements() / 3;
    }

    /** Coordinate c of a vertex that was added. */
    public double position(int vertex, int c) {
      return positions.getElement(3 * vertex + c);
    }

    /** Faces so far. */
    public int faceCount() {
      return faces.size();
    }

    /** The mesh. */
    public RawMesh build() {
      return new RawMesh(this);
    }
  }
}
