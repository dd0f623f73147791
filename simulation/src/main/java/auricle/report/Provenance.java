package auricle.report;

import java.util.List;

/**
 * What a result was made from.
 *
 * @param version of this program
 * @param title of the model
 * @param modelFile name of the model file
 * @param modelSha256 hash of its bytes
 * @param meshFile name of the mesh file; empty if the mesh was generated
 * @param meshSha256 hash of its bytes
 * @param otherMeshes further mesh files: of the rest shape, of surfaces to touch
 */
public record Provenance(
    String version,
    String title,
    String modelFile,
    String modelSha256,
    String meshFile,
    String meshSha256,
    List<MeshFile> otherMeshes) {

  /**
   * A mesh file.
   *
   * @param name of the file
   * @param sha256 hash of its bytes
   */
  public record MeshFile(String name, String sha256) {}
}
