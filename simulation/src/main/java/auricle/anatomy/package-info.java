/**
 * The auricle: measurements, levels and regions of an ear, and the parametric mid-surface of a
 * whole external ear as a shell mesh with its chart and landmark curves.
 *
 * <p>{@code ShapeParameters} over the plan form ({@code PlanForm}) give a {@code LocalForm} at each
 * place around, that an {@code EarProfile}, that over its trace a {@code Section}; sections are the
 * {@code AuricleSurface}, which a {@code MeshPlan} samples into an {@code Auricle}. THEORY.md, "The
 * auricle".
 *
 * <p>Everything is a right ear in the ear frame: x lateral, y anterior, z superior, mm; the mastoid
 * plane is x = 0. Normals point to the visible face.
 */
@NullMarked
package auricle.anatomy;

import org.jspecify.annotations.NullMarked;
