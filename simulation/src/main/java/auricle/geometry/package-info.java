/** Plain three-dimensional maths: vectors, frames, angles. Knows no word of anatomy or shells. */
@NullMarked
package auricle.geometry;

import org.jspecify.annotations.NullMarked;
