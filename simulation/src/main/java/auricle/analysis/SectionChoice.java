package auricle.analysis;

import java.util.List;
import java.util.Optional;

/**
 * A section and where it is: plies from the under side (against the normal) upwards. A homogeneous
 * isotropic sheet is one ply.
 *
 * @param at place in the model file
 * @param where the triangles that have it
 * @param plies at least one
 * @param offset_mm how far the middle of all plies lies above the mesh, along the normal
 * @param axis first material axis; must be given if a ply is not isotropic
 */
public record SectionChoice(
    String at, Selector where, List<Ply> plies, double offset_mm, Optional<MaterialAxis> axis) {}
