/** Mesh files in: OBJ, STL, PLY and VTU, checked before anything is built on them. */
@NullMarked
package auricle.meshfile;

import org.jspecify.annotations.NullMarked;
