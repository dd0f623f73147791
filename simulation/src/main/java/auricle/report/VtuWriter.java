package auricle.report;

import auricle.analysis.FieldData;
import auricle.analysis.ShellSnapshot;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Base64;
import java.util.List;

/**
 * A shell as a VTK XML unstructured grid (.vtu): triangles with fields, numbers inline as base64 of
 * little-endian doubles and integers, each array after its length in bytes (UInt64). The points are
 * those of the starting shape; warping by the field {@code displacement_mm} shows the deformed one.
 */
public final class VtuWriter {
  private static final int TRIANGLE = 5;

  private VtuWriter() {}

  /**
   * The file.
   *
   * @param snapshot the shell
   * @param note one line that the file carries as a comment
   */
  public static String write(ShellSnapshot snapshot, String note) {
    StringBuilder xml = new StringBuilder(1 << 16);
    xml.append("<?xml version=\"1.0\"?>\n<!-- ").append(comment(note)).append(" -->\n");
    xml.append("<VTKFile type=\"UnstructuredGrid\" version=\"1.0\" byte_order=\"LittleEndian\"");
    xml.append(" header_type=\"UInt64\">\n<UnstructuredGrid>\n<Piece NumberOfPoints=\"");
    xml.append(snapshot.vertexCount()).append("\" NumberOfCells=\"");
    xml.append(snapshot.triangleCount()).append("\">\n");
    fields(xml, "PointData", snapshot.pointFields());
    fields(xml, "CellData", snapshot.cellFields());
    points(xml, snapshot);
    cells(xml, snapshot);
    return xml.append("</Piece>\n</UnstructuredGrid>\n</VTKFile>\n").toString();
  }

  private static void points(StringBuilder xml, ShellSnapshot snapshot) {
    ByteBuffer data = buffer(24 * snapshot.vertexCount());
    for (int v = 0; v < snapshot.vertexCount(); v++) {
      for (int c = 0; c < 3; c++) {
        data.putDouble(snapshot.coordinate(v, c));
      }
    }
    xml.append("<Points>\n");
    array(xml, "Float64", "Points", 3, data);
    xml.append("</Points>\n");
  }

  private static void cells(StringBuilder xml, ShellSnapshot snapshot) {
    int n = snapshot.triangleCount();
    ByteBuffer corners = buffer(12 * n);
    ByteBuffer ends = buffer(4 * n);
    ByteBuffer types = buffer(n);
    for (int t = 0; t < n; t++) {
      for (int c = 0; c < 3; c++) {
        corners.putInt(snapshot.corner(t, c));
      }
      ends.putInt(3 * (t + 1));
      types.put((byte) TRIANGLE);
    }
    xml.append("<Cells>\n");
    array(xml, "Int32", "connectivity", 1, corners);
    array(xml, "Int32", "offsets", 1, ends);
    array(xml, "UInt8", "types", 1, types);
    xml.append("</Cells>\n");
  }

  private static void fields(StringBuilder xml, String kind, List<FieldData> fields) {
    xml.append('<').append(kind).append(">\n");
    for (FieldData field : fields) {
      ByteBuffer data = buffer(8 * field.places() * field.components());
      for (int i = 0; i < field.places(); i++) {
        for (int c = 0; c < field.components(); c++) {
          data.putDouble(field.value(i, c));
        }
      }
      array(xml, "Float64", field.name(), field.components(), data);
    }
    xml.append("</").append(kind).append(">\n");
  }

  private static void array(
      StringBuilder xml, String type, String name, int components, ByteBuffer data) {
    ByteBuffer whole = ByteBuffer.allocate(8 + data.capacity()).order(ByteOrder.LITTLE_ENDIAN);
    whole.putLong(data.capacity()).put(data.flip());
    xml.append("<DataArray type=\"").append(type).append("\" Name=\"").append(name);
    xml.append("\" NumberOfComponents=\"").append(components).append("\" format=\"binary\">\n");
    xml.append(Base64.getEncoder().encodeToString(whole.array())).append("\n</DataArray>\n");
  }

  private static ByteBuffer buffer(int bytes) {
    return ByteBuffer.allocate(bytes).order(ByteOrder.LITTLE_ENDIAN);
  }

  private static String comment(String note) {
    return note.replace("--", "- -").replace('\n', ' ');
  }
}
