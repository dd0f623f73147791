package auricle.analysis;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import auricle.mesh.GridMesher;
import auricle.mesh.ShellMesh;
import auricle.meshfile.MeshFiles;
import java.nio.file.Path;
import java.util.Optional;

/** Brings the mesh that a model asks for. */
final class MeshLoader {
  private MeshLoader() {}

  /**
   * The mesh.
   *
   * @param findings gets what is doubtful in a mesh file
   * @throws BadInputException if there is none, with all findings
   */
  static ShellMesh load(MeshSource source, Findings findings) throws BadInputException {
    if (source instanceof MeshSource.Generated generated) {
      return generate(generated);
    }
    MeshSource.File file = (MeshSource.File) source;
    Optional<ShellMesh> mesh = MeshFiles.read(Path.of(file.path()), findings);
    findings.stopIfErrors();
    return mesh.orElseThrow(
        () ->
            new BadInputException(
                Finding.error(file.at(), "a file that holds no mesh", "triangles", "")));
  }

  private static ShellMesh generate(MeshSource.Generated source) throws BadInputException {
    try {
      return GridMesher.mesh(source.surface(), source.grid());
    } catch (IllegalArgumentException e) {
      throw new BadInputException(
          Finding.error(
              source.at(),
              "dimensions or divisions that make no mesh (" + e.getMessage() + ")",
              "triangles of some area, each edge in at most two of them",
              "A closed surface needs at least three divisions around; angles and radii must differ."));
    }
  }
}
