/** The triangulated mid-surface: topology, generators, regions and fields, the rest shape. */
@NullMarked
package auricle.mesh;

import org.jspecify.annotations.NullMarked;
