package auricle.meshfile;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Findings;
import auricle.mesh.RawMesh;
import java.util.Map;
import java.util.OptionalInt;

/**
 * VTK XML unstructured grids (.vtu): triangles, quadrilaterals and polygons of three or four
 * corners; numbers in words, inline base64, or appended raw or as base64, plain or packed with
 * zlib, of either byte order. Vertex and line cells are left out with a warning, other cells
 * refused. Points and cells count from 0; data fields are not read.
 */
final class VtuReader {
  private static final Map<Integer, String> OTHER_CELLS =
      Map.of(
          6,
          "triangle strip",
          8,
          "pixel",
          10,
          "tetrahedron",
          12,
          "hexahedron",
          13,
          "wedge",
          14,
          "pyramid",
          22,
          "quadratic triangle",
          23,
          "quadratic quadrilateral",
          24,
          "quadratic tetrahedron");

  private final String where;
  private final VtuNumbers numbers;
  private final RawMesh.Builder mesh = RawMesh.builder(0);
  private int left;

  private VtuReader(VtuDocument document) throws BadInputException {
    this.where = document.where();
    this.numbers = new VtuNumbers(document);
  }

  static RawMesh read(byte[] bytes, String where, Findings findings) throws BadInputException {
    VtuDocument document = new VtuDocument(bytes, where);
    String type = document.head().getOrDefault("type", "");
    if (!"VTKFile".equals(document.head().get("element")) || !type.equals("UnstructuredGrid")) {
      String found = "<" + document.head().get("element") + " type=\"" + type + "\">";
      throw MeshFiles.bad(where, found, "<VTKFile type=\"UnstructuredGrid\">", "");
    }
    VtuReader reader = new VtuReader(document);
    for (VtuDocument.Piece piece : document.pieces()) {
      reader.piece(piece);
    }
    if (reader.left > 0) {
      String found = reader.left + " vertex or line cells left out";
      findings.warning(where, found, "triangles", "");
    }
    return reader.mesh.build();
  }

  private void piece(VtuDocument.Piece piece) throws BadInputException {
    int points = count(piece, "NumberOfPoints");
    int cells = count(piece, "NumberOfCells");
    if (points == 0 && cells == 0) {
      return;
    }
    int firstPoint = mesh.vertexCount();
    double[] x = array(piece, "Points", 3L * points);
    double[] ends = array(piece, "offsets", cells);
    double[] corners = array(piece, "connectivity", corners(ends));
    double[] types = array(piece, "types", cells);
    for (int i = 0; i < points; i++) {
      mesh.vertex(x[3 * i], x[3 * i + 1], x[3 * i + 2]);
    }
    double from = 0;
    for (int i = 0; i < cells; i++) {
      if (!(ends[i] >= from && ends[i] <= corners.length)) {
        String expected = "ascending, and at most " + corners.length;
        throw MeshFiles.bad(where, "cell " + i + " with the offset " + ends[i], expected, "");
      }
      cell(i, (int) types[i], corners, (int) from, (int) ends[i], firstPoint);
      from = ends[i];
    }
  }

  private void cell(int number, int type, double[] corners, int from, int end, int firstPoint)
      throws BadInputException {
    if (type >= 1 && type <= 4) {
      left++;
      return;
    }
    int size = end - from;
    boolean fits = (type == 5 && size == 3) || (type == 9 && size == 4) || type == 7;
    if (!fits) {
      String name = OTHER_CELLS.containsKey(type) ? " (" + OTHER_CELLS.get(type) + ")" : "";
      throw MeshFiles.bad(
          where,
          "cell " + number + " of type " + type + name + " with " + size + " points",
          "triangles (type 5) or quadrilaterals (type 9)",
          "Extract the surface and triangulate it.");
    }
    int[] face = new int[size];
    for (int k = 0; k < size; k++) {
      double v = corners[from + k];
      // kept out of the mesh's range if it is out of its own piece's
      face[k] = v >= 0 && v == Math.rint(v) ? (int) Math.min(v + firstPoint, 1e9) : -1;
    }
    mesh.face(face);
  }

  private int count(VtuDocument.Piece piece, String attribute) throws BadInputException {
    String word = piece.attributes().getOrDefault(attribute, "");
    OptionalInt count = Words.whole(word);
    if (count.isEmpty() || count.getAsInt() < 0) {
      throw MeshFiles.bad(where, attribute + "=\"" + word + "\"", "a number", "");
    }
    return count.getAsInt();
  }

  /** Corners of all cells: where the last one ends. */
  private long corners(double[] ends) throws BadInputException {
    double last = ends.length == 0 ? 0 : ends[ends.length - 1];
    if (!(last >= 0 && last <= Integer.MAX_VALUE)) {
      throw MeshFiles.bad(
          where, "a last cell with the offset " + last, "the number of corners", "");
    }
    return (long) last;
  }

  /**
   * @param expected numbers it should hold
   */
  private double[] array(VtuDocument.Piece piece, String name, long expected)
      throws BadInputException {
    VtuDocument.Array array = piece.arrays().get(name);
    if (array == null) {
      throw MeshFiles.bad(where, "no array '" + name + "'", "points and cells", "");
    }
    double[] values = numbers.of(array, name, expected);
    if (values.length != expected) {
      String found = "array '" + name + "' with " + values.length + " numbers";
      String remedy = "The counts of the piece and its arrays disagree: write the file again.";
      throw MeshFiles.bad(where, found, String.valueOf(expected), remedy);
    }
    return values;
  }
}
