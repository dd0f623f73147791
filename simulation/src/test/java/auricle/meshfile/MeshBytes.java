package auricle.meshfile;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.zip.Deflater;

/** The same small mesh, two by two cells of a bent sheet, written in every format that is read. */
final class MeshBytes {
  /** x, y, z of nine vertices. */
  static final double[] X = new double[27];

  /** Eight triangles. */
  static final int[] T = new int[24];

  static {
    for (int v = 0; v < 9; v++) {
      X[3 * v] = v % 3;
      X[3 * v + 1] = (double) (v / 3);
      X[3 * v + 2] = 0.125 * (v % 3) * (v % 3);
    }
    for (int q = 0; q < 4; q++) {
      int a = q / 2 * 3 + q % 2;
      int[] two = {a, a + 1, a + 4, a, a + 4, a + 3};
      System.arraycopy(two, 0, T, 6 * q, 6);
    }
  }

  private MeshBytes() {}

  /** File name to content. */
  static Map<String, byte[]> all() {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("mesh.obj", obj().getBytes(StandardCharsets.UTF_8));
    files.put("ascii.stl", asciiStl().getBytes(StandardCharsets.UTF_8));
    files.put("binary.stl", binaryStl());
    files.put("ascii.ply", asciiPly().getBytes(StandardCharsets.UTF_8));
    files.put("little.ply", binaryPly(ByteOrder.LITTLE_ENDIAN));
    files.put("big.ply", binaryPly(ByteOrder.BIG_ENDIAN));
    for (Form form : Form.values()) {
      files.put(form.name() + ".vtu", vtu(form));
      files.put(form.name() + "_zlib.VTU", zlib(form));
    }
    return files;
  }

  /** The content of one of them. */
  static byte[] of(String name) {
    return Objects.requireNonNull(all().get(name));
  }

  static String obj() {
    StringBuilder s = new StringBuilder("# a sheet\no sheet\n");
    for (int v = 0; v < 9; v++) {
      s.append("v ").append(X[3 * v]).append(' ').append(X[3 * v + 1]).append(' ');
      s.append(X[3 * v + 2]).append("\r\n");
    }
    s.append("vn 0 0 1\ng left low\n");
    for (int t = 0; t < 8; t++) {
      s.append(t == 4 ? "g high\nf" : "f");
      for (int c = 0; c < 3; c++) {
        int v = T[3 * t + c];
        s.append(' ').append(t == 1 ? v - 9 : v + 1).append(c == 0 ? "//1" : "");
      }
      s.append('\n');
    }
    return s.toString();
  }

  static String asciiStl() {
    StringBuilder s = new StringBuilder("solid sheet\n");
    for (int c = 0; c < 24; c++) {
      s.append(c % 3 == 0 ? "facet normal 0 0 0\nouter loop\n" : "").append("  vertex");
      for (int k = 0; k < 3; k++) {
        s.append(' ').append(X[3 * T[c] + k]);
      }
      s.append(c % 3 == 2 ? "\nendloop\nendfacet\n" : "\n");
    }
    return s.append("endsolid sheet\n").toString();
  }

  static byte[] binaryStl() {
    ByteBuffer b = ByteBuffer.allocate(84 + 50 * 8).order(ByteOrder.LITTLE_ENDIAN);
    b.put("solid but binary".getBytes(StandardCharsets.US_ASCII)).position(80);
    b.putInt(8);
    for (int t = 0; t < 8; t++) {
      b.position(84 + 50 * t + 12);
      for (int k = 0; k < 9; k++) {
        b.putFloat((float) X[3 * T[3 * t + k / 3] + k % 3]);
      }
    }
    return b.array();
  }

  static String plyHeader(String format) {
    return "ply\nformat "
        + format
        + " 1.0\ncomment a sheet\nelement vertex 9\nproperty double x\nproperty double y\n"
        + "property double z\nproperty uchar red\nelement face 8\nproperty float quality\n"
        + "property list uchar int vertex_indices\nend_header\n";
  }

  static String asciiPly() {
    StringBuilder s = new StringBuilder(plyHeader("ascii"));
    for (int v = 0; v < 9; v++) {
      s.append(X[3 * v] + " " + X[3 * v + 1] + " " + X[3 * v + 2] + " 255\n");
    }
    for (int t = 0; t < 8; t++) {
      s.append("0.5 3 " + T[3 * t] + " " + T[3 * t + 1] + " " + T[3 * t + 2] + "\n");
    }
    return s.toString();
  }

  static byte[] binaryPly(ByteOrder order) {
    boolean big = order == ByteOrder.BIG_ENDIAN;
    byte[] head =
        plyHeader(big ? "binary_big_endian" : "binary_little_endian")
            .getBytes(StandardCharsets.US_ASCII);
    ByteBuffer b = ByteBuffer.allocate(head.length + 9 * 25 + 8 * 17).order(order).put(head);
    for (int v = 0; v < 9; v++) {
      b.putDouble(X[3 * v]).putDouble(X[3 * v + 1]).putDouble(X[3 * v + 2]).put((byte) -1);
    }
    for (int t = 0; t < 8; t++) {
      b.putFloat(0.5f).put((byte) 3);
      b.putInt(T[3 * t]).putInt(T[3 * t + 1]).putInt(T[3 * t + 2]);
    }
    return b.array();
  }

  /** How a VTU file carries its numbers. */
  enum Form {
    WORDS,
    INLINE,
    APPENDED_BASE64,
    APPENDED_RAW
  }

  static byte[] vtu(Form form) {
    return new Vtu(form, false, ByteOrder.BIG_ENDIAN).bytes();
  }

  static byte[] zlib(Form form) {
    return new Vtu(form, true, ByteOrder.LITTLE_ENDIAN).bytes();
  }

  /** Writes one file. */
  private static final class Vtu {
    private final Form form;
    private final boolean zlib;
    private final ByteOrder order;
    private final StringBuilder xml = new StringBuilder();
    private final ByteArrayOutputStream appended = new ByteArrayOutputStream();

    Vtu(Form form, boolean zlib, ByteOrder order) {
      this.form = form;
      this.zlib = zlib;
      this.order = order;
    }

    byte[] bytes() {
      boolean big = order == ByteOrder.BIG_ENDIAN;
      xml.append("<?xml version=\"1.0\"?>\n<VTKFile type=\"UnstructuredGrid\" byte_order=\"");
      xml.append(big ? "BigEndian\"" : "LittleEndian\"");
      xml.append(zlib ? " header_type=\"UInt64\" compressor=\"vtkZLibDataCompressor\">" : ">");
      xml.append("<UnstructuredGrid><Piece NumberOfPoints=\"9\" NumberOfCells=\"8\">\n");
      xml.append("<PointData><DataArray type=\"Int8\" Name=\"x\" format=\"ascii\">1</DataArray>");
      xml.append("</PointData><Points>");
      array("Float64", "Points", X);
      xml.append("</Points>\n<Cells>");
      double[] corners = new double[24];
      double[] ends = new double[8];
      double[] types = new double[8];
      for (int c = 0; c < 24; c++) {
        corners[c] = T[c];
        ends[c / 3] = 3 * (c / 3) + 3;
        types[c / 3] = 5;
      }
      array("Int64", "connectivity", corners);
      array("Int32", "offsets", ends);
      array("UInt8", "types", types);
      xml.append("</Cells></Piece></UnstructuredGrid>\n");
      ByteArrayOutputStream file = new ByteArrayOutputStream();
      file.writeBytes(text(xml.toString()));
      if (appended.size() > 0) {
        String kind = form == Form.APPENDED_RAW ? "raw" : "base64";
        file.writeBytes(text("<AppendedData encoding=\"" + kind + "\">\n _"));
        file.writeBytes(appended.toByteArray());
        file.writeBytes(text("\n</AppendedData>\n"));
      }
      file.writeBytes(text("</VTKFile>\n"));
      return file.toByteArray();
    }

    private void array(String type, String name, double[] values) {
      xml.append("<DataArray type=\"" + type + "\" Name=\"" + name + "\" format=\"");
      if (form == Form.WORDS) {
        xml.append("ascii\">");
        for (double v : values) {
          xml.append(type.equals("Float64") ? String.valueOf(v) : (int) v).append(' ');
        }
        // elements of their own inside an array are usual
        xml.append("<InformationKey name=\"RANGE\">7</InformationKey>\n</DataArray>\n");
        return;
      }
      byte[] data = numbers(type, values);
      if (form == Form.INLINE) {
        xml.append("binary\">\n").append(new String(base64(data), StandardCharsets.US_ASCII));
        xml.append("\n</DataArray>\n");
      } else {
        xml.append("appended\" offset=\"" + appended.size() + "\"/>\n");
        appended.writeBytes(form == Form.APPENDED_RAW ? whole(data) : base64(data));
      }
    }

    private byte[] numbers(String type, double[] values) {
      ByteBuffer b = ByteBuffer.allocate(8 * values.length).order(order);
      for (double v : values) {
        switch (type) {
          case "Float64" -> b.putDouble(v);
          case "Int64" -> b.putLong((long) v);
          case "Int32" -> b.putInt((int) v);
          default -> b.put((byte) v);
        }
      }
      return Arrays.copyOf(b.array(), b.position());
    }

    /** Packed, the head is encoded by itself; plain, head and numbers run on. */
    private byte[] base64(byte[] data) {
      byte[] whole = whole(data);
      if (!zlib) {
        return Base64.getEncoder().encode(whole);
      }
      int head = 8 * 5;
      byte[] first = Base64.getEncoder().encode(Arrays.copyOf(whole, head));
      byte[] rest = Base64.getEncoder().encode(Arrays.copyOfRange(whole, head, whole.length));
      byte[] all = Arrays.copyOf(first, first.length + rest.length);
      System.arraycopy(rest, 0, all, first.length, rest.length);
      return all;
    }

    private byte[] whole(byte[] data) {
      if (!zlib) {
        return ByteBuffer.allocate(4 + data.length)
            .order(order)
            .putInt(data.length)
            .put(data)
            .array();
      }
      int cut = data.length / 2 + 1;
      byte[] one = packed(Arrays.copyOf(data, cut));
      byte[] two = packed(Arrays.copyOfRange(data, cut, data.length));
      ByteBuffer b = ByteBuffer.allocate(40 + one.length + two.length).order(order);
      b.putLong(2).putLong(cut).putLong(data.length - cut);
      return b.putLong(one.length).putLong(two.length).put(one).put(two).array();
    }

    private static byte[] packed(byte[] data) {
      Deflater deflater = new Deflater();
      deflater.setInput(data);
      deflater.finish();
      byte[] out = new byte[data.length + 64];
      int size = deflater.deflate(out);
      deflater.end();
      return Arrays.copyOf(out, size);
    }

    private static byte[] text(String s) {
      return s.getBytes(StandardCharsets.US_ASCII);
    }
  }
}
