package auricle.analysis;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.mesh.GridMesher;
import auricle.mesh.ShellMesh;

/** Brings the mesh that a model asks for. */
final class MeshLoader {
  private MeshLoader() {}

  static ShellMesh load(MeshSource source) throws BadInputException {
    if (source instanceof MeshSource.Generated generated) {
      return generate(generated);
    }
    throw new BadInputException(
        Finding.error(source.at(), "a mesh file", "a generated mesh", "Not read yet."));
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
