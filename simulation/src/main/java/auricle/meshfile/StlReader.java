package auricle.meshfile;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Findings;
import auricle.mesh.RawMesh;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * STL, binary or ascii. Corners within a millionth of the mesh's size (its box's diagonal) become
 * one vertex: single precision, in which most STL files are written, is ten times finer. The
 * facets' own normals are not used.
 */
final class StlReader {
  private static final int HEADER = 84;
  private static final int FACET = 50;
  private static final double WELD = 1e-6;

  private StlReader() {}

  static RawMesh read(byte[] bytes, String where, Findings findings) throws BadInputException {
    double[] corners = isAscii(bytes) ? ascii(bytes, where, findings) : binary(bytes, where);
    RawMesh.Builder mesh = RawMesh.builder(1);
    VertexWelder welder = new VertexWelder(mesh, Math.max(WELD * size(corners), 1e-300));
    for (int k = 0; k + 9 <= corners.length; k += 9) {
      int a = welder.vertex(corners[k], corners[k + 1], corners[k + 2]);
      int b = welder.vertex(corners[k + 3], corners[k + 4], corners[k + 5]);
      mesh.face(a, b, welder.vertex(corners[k + 6], corners[k + 7], corners[k + 8]));
    }
    return mesh.build();
  }

  /** Binary files may begin with "solid" too: those have the length that their count says. */
  private static boolean isAscii(byte[] bytes) {
    if (bytes.length >= HEADER && HEADER + FACET * count(bytes) == bytes.length) {
      return false;
    }
    String start = new String(bytes, 0, Math.min(bytes.length, 512), StandardCharsets.ISO_8859_1);
    return start.stripLeading().toLowerCase(Locale.ROOT).startsWith("solid")
        && start.indexOf('\0') < 0;
  }

  private static long count(byte[] bytes) {
    return Integer.toUnsignedLong(
        ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).getInt(HEADER - 4));
  }

  private static double[] binary(byte[] bytes, String where) throws BadInputException {
    if (bytes.length < HEADER) {
      String found = bytes.length + " bytes, not beginning with 'solid'";
      throw MeshFiles.bad(where, found, "an STL file: a header of 84 bytes, or text", "");
    }
    long count = count(bytes);
    long expected = HEADER + FACET * count;
    if (expected > bytes.length) {
      String found = count + " facets in the header, but " + bytes.length + " bytes";
      String remedy = "The file is cut off or not an STL file: write it again.";
      throw MeshFiles.bad(where, found, expected + " bytes", remedy);
    }
    ByteBuffer data = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    double[] corners = new double[9 * (int) count];
    for (int k = 0; k < corners.length; k++) {
      corners[k] = data.getFloat(HEADER + FACET * (k / 9) + 12 + 4 * (k % 9));
    }
    return corners;
  }

  private static double[] ascii(byte[] bytes, String where, Findings findings)
      throws BadInputException {
    String[] lines = new String(bytes, StandardCharsets.UTF_8).split("\r\n|\r|\n", -1);
    LineFaults faults = new LineFaults(where, findings);
    double[] corners = new double[3 * lines.length];
    int count = 0;
    int atFacet = 0;
    boolean ended = false;
    for (int i = 0; i < lines.length; i++) {
      String[] words = lines[i].strip().split("\\s+");
      switch (words[0].toLowerCase(Locale.ROOT)) {
        case "vertex" -> {
          vertex(words, i + 1, corners, 3 * count++, faults);
          atFacet++;
        }
        case "endfacet" -> {
          if (atFacet != 3) {
            faults.add(i + 1, "a facet of " + atFacet + " vertices", "three");
          }
          atFacet = 0;
        }
        case "endsolid" -> ended = true;
        case "solid", "facet", "outer", "endloop", "" -> {}
        default -> faults.add(i + 1, Words.quoted(lines[i]), "a line of an ascii STL file");
      }
    }
    faults.end();
    if (!ended || atFacet != 0) {
      String remedy = "The file is cut off: write it again.";
      throw MeshFiles.bad(where, "an end after " + count / 3 + " facets", "'endsolid'", remedy);
    }
    return Arrays.copyOf(corners, 3 * count);
  }

  private static void vertex(String[] words, int line, double[] x, int at, LineFaults faults) {
    boolean whole = words.length == 4;
    for (int c = 0; c < 3 && whole; c++) {
      OptionalDouble value = Words.number(words[c + 1]);
      whole = value.isPresent();
      x[at + c] = value.orElse(0);
    }
    if (!whole) {
      faults.add(line, Words.quoted(String.join(" ", words)), "three numbers after 'vertex'");
    }
  }

  /** Diagonal of the box around the finite points. */
  private static double size(double[] points) {
    double sum = 0;
    for (int c = 0; c < 3; c++) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int k = c; k < points.length; k += 3) {
        if (Double.isFinite(points[k])) {
          low = Math.min(low, points[k]);
          high = Math.max(high, points[k]);
        }
      }
      sum += high > low ? (high - low) * (high - low) : 0;
    }
    return Math.sqrt(sum);
  }
}
