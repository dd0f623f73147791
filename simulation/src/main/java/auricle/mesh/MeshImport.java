package auricle.mesh;

import auricle.diagnostics.Findings;
import java.util.Arrays;
import java.util.Optional;

/**
 * Makes a shell mesh of a raw one, or says all that is wrong with it.
 *
 * <p>Quadrilaterals are cut in two and vertices that no face uses are left out, both with a
 * warning. Refused are: no faces, coordinates that are not finite, corners that name no vertex,
 * degenerate or doubled triangles, non-manifold edges, faces oriented against each other, vertices
 * in which groups of faces meet without an edge, and more than one piece. Surface normals are
 * {@link VertexNormals estimated}.
 */
public final class MeshImport {
  private MeshImport() {}

  /**
   * The mesh, unless a finding of {@code findings} stops it.
   *
   * @param where name of the file, for findings
   * @return empty if the mesh cannot be used
   */
  public static Optional<ShellMesh> build(RawMesh raw, String where, Findings findings) {
    if (raw.faceCount() == 0 || raw.vertexCount() == 0) {
      String found = raw.vertexCount() + " vertices and " + raw.faceCount() + " faces";
      findings.error(where, found, "a surface of triangles", "");
      return Optional.empty();
    }
    Findings own = new Findings();
    Optional<ShellMesh> mesh = checked(raw, where, own);
    findings.addAll(own.list());
    return mesh;
  }

  private static Optional<ShellMesh> checked(RawMesh raw, String where, Findings findings) {
    if (!FaceCheck.corners(raw, where, findings)) {
      return Optional.empty();
    }
    Triangulation triangles = new Triangulation(raw);
    if (triangles.count() > raw.faceCount()) {
      int quads = triangles.count() - raw.faceCount();
      findings.warning(where, quads + " quadrilaterals, cut in two each", "triangles", "");
    }
    FaceCheck.shapes(raw, triangles, where, findings);
    new JoinCheck(raw, triangles, where, findings).run();
    int[] number = numbering(raw, triangles, where, findings);
    if (findings.hasErrors()) {
      return Optional.empty();
    }
    ShellMesh mesh = mesh(raw, triangles, number);
    Creases.warn(mesh, where, findings);
    return Optional.of(mesh);
  }

  /** New number of each vertex, -1 for those that no face uses. */
  private static int[] numbering(
      RawMesh raw, Triangulation triangles, String where, Findings findings) {
    int[] number = new int[raw.vertexCount()];
    Arrays.fill(number, -1);
    for (int c = 0; c < 3 * triangles.count(); c++) {
      number[triangles.vertex(c / 3, c % 3)] = 0;
    }
    Offenders idle = new Offenders();
    int next = 0;
    for (int v = 0; v < number.length; v++) {
      if (number[v] == 0) {
        number[v] = next++;
      } else {
        idle.add(FaceCheck.vertex(raw, v));
      }
    }
    idle.warning(findings, where, "vertices left out", "every vertex in a face", "");
    return number;
  }

  private static ShellMesh mesh(RawMesh raw, Triangulation triangles, int[] number) {
    int count = 0;
    double[] x = new double[3 * raw.vertexCount()];
    for (int v = 0; v < number.length; v++) {
      for (int c = 0; c < 3 && number[v] >= 0; c++) {
        x[3 * number[v] + c] = raw.position(v, c);
        count = number[v] + 1;
      }
    }
    x = Arrays.copyOf(x, 3 * count);
    int[] corners = new int[3 * triangles.count()];
    Arrays.setAll(corners, c -> number[triangles.vertex(c / 3, c % 3)]);
    Topology topology = new Topology(count, corners);
    double[] normals = VertexNormals.estimate(x, topology, VertexNormals.CREASE);
    ShellMesh.Builder builder = ShellMesh.builder(x, normals, topology);
    Regions.add(builder, raw, triangles);
    return builder.build();
  }
}
