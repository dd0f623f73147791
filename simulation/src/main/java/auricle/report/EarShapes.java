package auricle.report;

import auricle.analysis.FieldData;
import auricle.analysis.ShellSnapshot;
import auricle.rehearsal.DeformedEar;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A shape of the ear as files: its mid-surface with fields (VTU), and its wall with both faces and
 * its edges (OBJ). In mm: x lateral, y anterior, z superior; a left ear is mirrored, so that x
 * points to the person's right for both.
 */
final class EarShapes {
  private final float[] points;
  private final float[] normals;
  private final float[] thickness;
  private final int[] triangles;
  private final DeformedEar ear;
  private final boolean left;

  EarShapes(DeformedEar ear, boolean left) {
    this.ear = ear;
    this.left = left;
    this.points = ear.points();
    this.normals = ear.normals();
    this.thickness = ear.thickness();
    this.triangles = ear.triangles();
    if (left) {
      mirror();
    }
  }

  /** Mirrored triangles turn the other way round, or their normals would point inwards. */
  private void mirror() {
    for (int i = 0; i < points.length; i += 3) {
      points[i] = -points[i];
      normals[i] = -normals[i];
    }
    for (int t = 0; t < triangles.length; t += 3) {
      int kept = triangles[t + 1];
      triangles[t + 1] = triangles[t + 2];
      triangles[t + 2] = kept;
    }
  }

  /** The mid-surface with its fields. */
  String vtu(String note) {
    List<FieldData> fields = new ArrayList<>();
    for (DeformedEar.Field field : DeformedEar.Field.values()) {
      fields.add(new FieldData(name(field), 1, doubles(ear.field(field))));
    }
    fields.add(new FieldData("thickness_mm", 1, doubles(thickness)));
    fields.add(new FieldData("normal", 3, doubles(normals)));
    return VtuWriter.write(new ShellSnapshot(doubles(points), triangles, fields, List.of()), note);
  }

  /** Name of a field in files, with its unit. */
  static String name(DeformedEar.Field field) {
    String unit = field.unit().equals("1") ? "" : "_" + field.unit().toLowerCase(Locale.ROOT);
    return field.key() + unit;
  }

  private static double[] doubles(float[] values) {
    return IntStream.range(0, values.length).mapToDouble(i -> values[i]).toArray();
  }

  /** The wall as a closed surface: anterior face, posterior face, edges. */
  String obj(String note) {
    StringBuilder text = new StringBuilder(1 << 17);
    text.append("# ").append(note.replace('\n', ' ')).append('\n');
    text.append("# mm; x to the person's right, y anterior, z superior\n");
    face(text, 0.5);
    face(text, -0.5);
    int n = thickness.length;
    Map<Long, Integer> open = new HashMap<>();
    for (int t = 0; t < triangles.length; t += 3) {
      int a = triangles[t];
      int b = triangles[t + 1];
      int c = triangles[t + 2];
      triangle(text, a, b, c);
      triangle(text, a + n, c + n, b + n);
      toggle(open, a, b);
      toggle(open, b, c);
      toggle(open, c, a);
    }
    open.keySet().stream().sorted().forEach(e -> edge(text, (int) (e >> 32), (int) (long) e, n));
    return text.toString();
  }

  private void face(StringBuilder text, double side) {
    for (int v = 0; v < thickness.length; v++) {
      text.append('v');
      for (int c = 0; c < 3; c++) {
        double at = points[3 * v + c] + side * thickness[v] * normals[3 * v + c];
        text.append(' ').append(Math.round(at * 1e5) / 1e5);
      }
      text.append('\n');
    }
  }

  /** Keeps the edges that only one triangle has, in that triangle's direction. */
  private static void toggle(Map<Long, Integer> open, int from, int to) {
    if (open.remove(((long) to << 32) | from) == null) {
      open.put(((long) from << 32) | to, 1);
    }
  }

  private static void edge(StringBuilder text, int a, int b, int n) {
    triangle(text, a, a + n, b + n);
    triangle(text, a, b + n, b);
  }

  private static void triangle(StringBuilder text, int a, int b, int c) {
    text.append("f ").append(a + 1).append(' ').append(b + 1).append(' ').append(c + 1);
    text.append('\n');
  }
}
