package auricle.report;

/**
 * What a result was made from.
 *
 * @param version of this program
 * @param title of the model
 * @param modelFile name of the model file
 * @param modelSha256 hash of its bytes
 * @param meshFile name of the mesh file; empty if the mesh was generated
 * @param meshSha256 hash of its bytes
 */
public record Provenance(
    String version,
    String title,
    String modelFile,
    String modelSha256,
    String meshFile,
    String meshSha256) {}
