package auricle.analysis;

import auricle.mesh.GridOptions;
import auricle.mesh.ParametricSurface;

/** Where a mesh comes from. */
public sealed interface MeshSource {
  /** Place in the model file. */
  String at();

  /** A mesh file, its path already resolved against the model file. */
  record File(String at, String path) implements MeshSource {}

  /** A generated mesh. */
  record Generated(String at, ParametricSurface surface, GridOptions grid) implements MeshSource {}
}
