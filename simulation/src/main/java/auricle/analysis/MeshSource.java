package auricle.analysis;

import auricle.mesh.GridOptions;
import auricle.mesh.ParametricSurface;

/** Where a mesh comes from. */
public sealed interface MeshSource {
  /** Place in the model file. */
  String at();

  /**
   * A mesh file, its path already resolved against the model file.
   *
   * @param scale factor that makes its coordinates mm
   * @param refinements how often every triangle is cut into four
   */
  record File(String at, String path, double scale, int refinements) implements MeshSource {}

  /**
   * A generated mesh.
   *
   * @param firstGrading length of the cells at the end over those at the beginning, along s
   * @param secondGrading the same along t
   */
  record Generated(
      String at,
      ParametricSurface surface,
      double firstGrading,
      double secondGrading,
      GridOptions grid)
      implements MeshSource {}
}
