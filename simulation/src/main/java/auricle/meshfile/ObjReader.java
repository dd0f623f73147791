package auricle.meshfile;

import auricle.diagnostics.Findings;
import auricle.mesh.RawMesh;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Wavefront OBJ: {@code v}, {@code f} and {@code g}; the groups of {@code g} become regions. Lines
 * and points are left out with a warning; normals, texture, material and smoothing do not matter
 * here. Free-form surfaces are refused.
 *
 * <p>Our own because the kept library reads single precision, stops at the first fault and does not
 * tell its line.
 */
final class ObjReader {
  private static final List<String> IDLE =
      List.of("vn", "vt", "vp", "o", "s", "usemtl", "mtllib", "mg", "l", "p");

  private final RawMesh.Builder mesh = RawMesh.builder(1);
  private final LineFaults faults;
  private final List<String> groups = new ArrayList<>();
  private int linesAndPoints;

  private ObjReader(LineFaults faults) {
    this.faults = faults;
  }

  static RawMesh read(byte[] bytes, String where, Findings findings) {
    ObjReader reader = new ObjReader(new LineFaults(where, findings));
    String[] lines = new String(bytes, StandardCharsets.UTF_8).split("\r\n|\r|\n", -1);
    for (int i = 0; i < lines.length; i++) {
      int first = i;
      StringBuilder line = new StringBuilder(uncommented(lines[i]));
      while (line.length() > 0 && line.charAt(line.length() - 1) == '\\' && i + 1 < lines.length) {
        line.setCharAt(line.length() - 1, ' ');
        line.append(uncommented(lines[++i]));
      }
      reader.line(first + 1, line.toString().strip());
    }
    reader.faults.end();
    if (reader.linesAndPoints > 0) {
      findings.warning(where, reader.linesAndPoints + " lines or points left out", "faces", "");
    }
    return reader.mesh.build();
  }

  private static String uncommented(String line) {
    int cut = line.indexOf('#');
    return (cut < 0 ? line : line.substring(0, cut)).stripTrailing();
  }

  private void line(int number, String line) {
    if (line.isEmpty()) {
      return;
    }
    String[] words = line.split("\\s+");
    switch (words[0]) {
      case "v" -> vertex(number, line, words);
      case "f" -> face(number, words);
      case "g" -> {
        groups.clear();
        groups.addAll(List.of(words).subList(1, words.length));
      }
      default -> other(number, line, words[0]);
    }
  }

  private void other(int number, String line, String word) {
    if (!IDLE.contains(word)) {
      faults.add(number, Words.quoted(line), "a line of a polygon mesh (v, f, g, …)");
    }
    linesAndPoints += word.equals("l") || word.equals("p") ? 1 : 0;
  }

  private void vertex(int number, String line, String[] words) {
    double[] x = new double[3];
    boolean whole = words.length >= 4;
    for (int c = 0; c < 3 && whole; c++) {
      OptionalDouble value = Words.number(words[c + 1]);
      whole = value.isPresent();
      x[c] = value.orElse(Double.NaN);
    }
    if (!whole) {
      faults.add(number, Words.quoted(line), "three numbers after 'v'");
    }
    mesh.vertex(x[0], x[1], x[2]); // added all the same, so that later numbers stay right
  }

  private void face(int number, String[] words) {
    int[] corners = new int[words.length - 1];
    for (int k = 0; k < corners.length; k++) {
      String word = words[k + 1];
      int slash = word.indexOf('/');
      OptionalInt index = Words.whole(slash < 0 ? word : word.substring(0, slash));
      if (index.isEmpty() || index.getAsInt() == 0) {
        faults.add(number, Words.quoted(word), "the number of a vertex, from 1");
        return;
      }
      int i = index.getAsInt();
      corners[k] = i > 0 ? i - 1 : mesh.vertexCount() + i;
    }
    mesh.face(corners);
    groups.forEach(mesh::group);
  }
}
