package auricle.meshfile;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Findings;
import auricle.mesh.RawMesh;
import java.util.List;

/**
 * PLY, ascii or binary: elements {@code vertex} with x, y, z and {@code face} with the list {@code
 * vertex_indices} (or {@code vertex_index}). Other elements and properties are passed over.
 * Vertices and faces count from 0.
 */
final class PlyReader {
  private final RawMesh.Builder mesh = RawMesh.builder(0);
  private final PlyNumbers numbers;
  private final PlyHeader header;
  private final String where;

  private PlyReader(byte[] bytes, String where) throws BadInputException {
    this.where = where;
    this.header = new PlyHeader(bytes, where);
    this.numbers = PlyNumbers.of(bytes, header, where);
  }

  static RawMesh read(byte[] bytes, String where, Findings findings) throws BadInputException {
    PlyReader reader = new PlyReader(bytes, where);
    for (String needed : List.of("vertex", "face")) {
      if (reader.header.elements().stream().noneMatch(e -> e.name().equals(needed))) {
        throw MeshFiles.bad(
            where, "no element '" + needed + "' in the header", "a mesh of vertices and faces", "");
      }
    }
    for (PlyHeader.Element element : reader.header.elements()) {
      reader.elements(element);
    }
    return reader.mesh.build();
  }

  private void elements(PlyHeader.Element element) throws BadInputException {
    long least = leastBytes(element);
    if (least > numbers.left()) {
      throw MeshFiles.bad(
          where,
          element.count()
              + " elements '"
              + element.name()
              + "' in the header, but only "
              + numbers.left()
              + " bytes left for them",
          "at least " + least,
          "The file is cut off: write it again.");
    }
    int[] at = places(element);
    double[][] values = new double[element.properties().size()][];
    for (int i = 0; i < element.count() && values.length > 0; i++) {
      for (int p = 0; p < values.length; p++) {
        values[p] = property(element.properties().get(p));
      }
      add(element, at, values, i);
    }
  }

  /** Fewest bytes that the elements can take: lists may be empty, words take two with a blank. */
  private long leastBytes(PlyHeader.Element element) {
    boolean ascii = header.encoding() == PlyHeader.Encoding.ASCII;
    long each = 0;
    for (PlyHeader.Property p : element.properties()) {
      each += ascii ? 2 : p.length().orElse(p.type()).bytes();
    }
    return Math.max(0, each * element.count() - (ascii ? 1 : 0));
  }

  private int[] places(PlyHeader.Element element) throws BadInputException {
    return switch (element.name()) {
      case "vertex" -> needed(element, "x", "y", "z");
      case "face" -> {
        String list = element.indexOf("vertex_index") >= 0 ? "vertex_index" : "vertex_indices";
        yield needed(element, list);
      }
      default -> new int[0];
    };
  }

  private int[] needed(PlyHeader.Element element, String... names) throws BadInputException {
    int[] at = new int[names.length];
    for (int k = 0; k < names.length; k++) {
      at[k] = element.indexOf(names[k]);
      boolean list = element.name().equals("face");
      if (at[k] < 0 || element.properties().get(at[k]).length().isPresent() != list) {
        throw MeshFiles.bad(
            where,
            "element '"
                + element.name()
                + "' without a "
                + (list ? "list '" : "number '")
                + names[k]
                + "'",
            list ? "the list 'vertex_indices'" : "the numbers x, y and z",
            "");
      }
    }
    return at;
  }

  private double[] property(PlyHeader.Property property) throws BadInputException {
    double length = property.length().isPresent() ? numbers.next(property.length().get()) : 1;
    if (!(length >= 0 && length <= numbers.left())) {
      throw MeshFiles.bad(
          where, "a list of " + (long) length + " numbers, more than the file holds", "", "");
    }
    double[] values = new double[(int) length];
    for (int k = 0; k < values.length; k++) {
      values[k] = numbers.next(property.type());
    }
    return values;
  }

  private void add(PlyHeader.Element element, int[] at, double[][] values, int number)
      throws BadInputException {
    if (element.name().equals("vertex")) {
      mesh.vertex(values[at[0]][0], values[at[1]][0], values[at[2]][0]);
    } else if (element.name().equals("face")) {
      int[] corners = new int[values[at[0]].length];
      for (int k = 0; k < corners.length; k++) {
        double v = values[at[0]][k];
        if (v != Math.rint(v)) {
          String found = "face " + number + " with vertex number " + v;
          throw MeshFiles.bad(where, found, "a whole number", "");
        }
        corners[k] = (int) v; // beyond the range of int it stays out of the mesh's too
      }
      mesh.face(corners);
    }
  }
}
