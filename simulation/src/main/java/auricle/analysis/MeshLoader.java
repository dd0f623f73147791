package auricle.analysis;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import auricle.mesh.Graded;
import auricle.mesh.GridMesher;
import auricle.mesh.Refinement;
import auricle.mesh.ShellMesh;
import auricle.meshfile.MeshFiles;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** Brings the mesh that a model asks for. */
final class MeshLoader {
  private static final long MOST_CELLS = 1_000_000;

  private MeshLoader() {}

  /**
   * The mesh.
   *
   * @param findings gets what is doubtful about it
   * @throws BadInputException with all that makes it unusable
   */
  static ShellMesh load(MeshSource source, Findings findings) throws BadInputException {
    return source instanceof MeshSource.Generated generated
        ? generate(generated)
        : read((MeshSource.File) source, findings);
  }

  private static ShellMesh read(MeshSource.File source, Findings findings)
      throws BadInputException {
    Findings own = new Findings();
    Optional<ShellMesh> read = MeshFiles.read(path(source), own);
    if (read.isEmpty()) {
      throw new BadInputException(own.list());
    }
    findings.addAll(own.list());
    ShellMesh mesh = source.scale() == 1 ? read.get() : read.get().scaled(source.scale());
    for (int i = 0; i < source.refinements(); i++) {
      mesh = Refinement.refine(mesh);
    }
    return mesh;
  }

  private static Path path(MeshSource.File source) throws BadInputException {
    try {
      return Path.of(source.path());
    } catch (InvalidPathException e) {
      throw new BadInputException(
          Finding.error(
              source.at(), "a name that no file can have", "the name of a mesh file", ""));
    }
  }

  private static ShellMesh generate(MeshSource.Generated source) throws BadInputException {
    long cells = (long) source.grid().first() * source.grid().second();
    if (cells > MOST_CELLS) {
      throw new BadInputException(
          Finding.error(
              source.at() + "/divisions",
              cells + " cells",
              "at most " + MOST_CELLS,
              "Use fewer divisions."));
    }
    try {
      Graded surface = new Graded(source.surface(), source.firstGrading(), source.secondGrading());
      return GridMesher.mesh(surface, source.grid());
    } catch (IllegalArgumentException e) {
      throw new BadInputException(
          Finding.error(
              source.at(),
              "dimensions, corners or divisions that make no mesh (" + e.getMessage() + ")",
              "triangles of some area, each edge in at most two of them",
              "A closed surface needs at least three divisions around; angles and radii must differ;"
                  + " corners go round the surface and do not lie on one line."));
    }
  }
}
