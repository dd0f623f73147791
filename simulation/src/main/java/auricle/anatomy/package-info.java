/**
 * The auricle: ear measurements, levels, regions, and the parametric mid-surface of a whole
 * external ear as a shell mesh with its chart and landmark curves. Everything is a right ear in the
 * ear frame: x lateral, y anterior, z superior, mm, the mastoid plane at x = 0.
 */
@NullMarked
package auricle.anatomy;

import org.jspecify.annotations.NullMarked;
