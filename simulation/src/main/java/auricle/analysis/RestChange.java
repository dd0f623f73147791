package auricle.analysis;

import java.util.Optional;

/**
 * A change of the shape in which nothing is strained, at full load.
 *
 * @param at place in the model file
 * @param where the triangles that change
 * @param axis first axis of the numbers below; may be left out where both directions change alike
 * @param stretch1 factor on rest lengths along the axis
 * @param stretch2 factor on rest lengths across it
 * @param shear tensor shear strain added to the rest metric
 * @param curvature1_per_mm rest curvature added along the axis, positive convex to the normal
 * @param curvature2_per_mm the same across it
 * @param twist_per_mm rest twist added
 */
public record RestChange(
    String at,
    Selector where,
    Optional<MaterialAxis> axis,
    double stretch1,
    double stretch2,
    double shear,
    double curvature1_per_mm,
    double curvature2_per_mm,
    double twist_per_mm) {}
