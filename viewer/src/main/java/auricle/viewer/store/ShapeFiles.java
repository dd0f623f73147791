package auricle.viewer.store;

import auricle.viewer.scene.EarSurface;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/** The middle surface of an ear as files of other programs; millimetres, ear frame, right ear. */
public final class ShapeFiles {
  private static final int STL_HEAD = 80;
  private static final int STL_TRIANGLE = 50;

  private ShapeFiles() {}

  /** Wavefront OBJ with normals. */
  public static String obj(EarSurface s, String title) {
    StringBuilder out = new StringBuilder("# " + title.replace('\n', ' ') + "; mm\n");
    for (int v = 0; v < s.vertexCount(); v++) {
      out.append(triple("v %.5f %.5f %.5f%n", s.points(), v));
    }
    for (int v = 0; v < s.vertexCount(); v++) {
      out.append(triple("vn %.5f %.5f %.5f%n", s.normals(), v));
    }
    for (int t = 0; t < s.triangleCount(); t++) {
      int[] c = corners(s, t);
      out.append(
          String.format(
              Locale.ROOT,
              "f %d//%d %d//%d %d//%d%n",
              c[0] + 1,
              c[0] + 1,
              c[1] + 1,
              c[1] + 1,
              c[2] + 1,
              c[2] + 1));
    }
    return out.toString();
  }

  /** Binary STL of the middle surface. */
  public static byte[] stl(EarSurface s) {
    ByteBuffer out =
        ByteBuffer.allocate(STL_HEAD + 4 + STL_TRIANGLE * s.triangleCount())
            .order(ByteOrder.LITTLE_ENDIAN);
    out.put(
        "auricle, middle surface, mm. Rehearsal, teaching, research; not a medical device"
            .getBytes(StandardCharsets.US_ASCII));
    out.position(STL_HEAD);
    out.putInt(s.triangleCount());
    for (int t = 0; t < s.triangleCount(); t++) {
      int[] c = corners(s, t);
      for (float n : normal(s, c)) {
        out.putFloat(n);
      }
      for (int v : c) {
        for (int k = 0; k < 3; k++) {
          out.putFloat(s.points()[3 * v + k]);
        }
      }
      out.putShort((short) 0);
    }
    return out.array();
  }

  /**
   * VTK XML of unstructured points and triangles with all fields, as text.
   *
   * @param note what it is and what for, as a comment
   */
  public static String vtu(EarSurface s, String note) {
    int n = s.vertexCount();
    int m = s.triangleCount();
    StringBuilder out = new StringBuilder("<?xml version=\"1.0\"?>\n");
    out.append("<!-- ").append(note.replace("--", "- -")).append(" -->\n");
    out.append("<VTKFile type=\"UnstructuredGrid\" version=\"0.1\" byte_order=\"LittleEndian\">\n");
    out.append(
        String.format(
            Locale.ROOT,
            "<UnstructuredGrid><Piece NumberOfPoints=\"%d\" NumberOfCells=\"%d\">%n",
            n,
            m));
    out.append("<Points>\n");
    array(out, "Float32", "mm", 3, s.points());
    out.append(
        "</Points>\n<Cells>\n<DataArray type=\"Int32\" Name=\"connectivity\" format=\"ascii\">\n");
    for (int v : s.triangles()) {
      out.append(v).append(' ');
    }
    out.append("\n</DataArray>\n<DataArray type=\"Int32\" Name=\"offsets\" format=\"ascii\">\n");
    for (int t = 1; t <= m; t++) {
      out.append(3 * t).append(' ');
    }
    out.append("\n</DataArray>\n<DataArray type=\"UInt8\" Name=\"types\" format=\"ascii\">\n");
    out.append("5 ".repeat(m)).append("\n</DataArray>\n</Cells>\n<PointData>\n");
    array(out, "Float32", "thickness_mm", 1, s.thickness());
    for (Map.Entry<String, float[]> field : new java.util.TreeMap<>(s.fields()).entrySet()) {
      array(out, "Float32", field.getKey(), 1, field.getValue());
    }
    return out.append("</PointData>\n</Piece></UnstructuredGrid></VTKFile>\n").toString();
  }

  private static void array(
      StringBuilder out, String type, String name, int parts, float[] values) {
    out.append(
        String.format(
            Locale.ROOT,
            "<DataArray type=\"%s\" Name=\"%s\" NumberOfComponents=\"%d\" format=\"ascii\">%n",
            type,
            name,
            parts));
    for (float v : values) {
      out.append(v).append(' ');
    }
    out.append("\n</DataArray>\n");
  }

  private static String triple(String pattern, float[] values, int at) {
    return String.format(
        Locale.ROOT, pattern, values[3 * at], values[3 * at + 1], values[3 * at + 2]);
  }

  private static int[] corners(EarSurface s, int t) {
    int[] v = s.triangles();
    return new int[] {v[3 * t], v[3 * t + 1], v[3 * t + 2]};
  }

  private static float[] normal(EarSurface s, int[] c) {
    float[] n = new float[3];
    for (int v : c) {
      for (int k = 0; k < 3; k++) {
        n[k] += s.normals()[3 * v + k];
      }
    }
    double length = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
    for (int k = 0; k < 3; k++) {
      n[k] = length > 0 ? (float) (n[k] / length) : 0;
    }
    return n;
  }
}
