/** An ear from what was measured on it: the shape whose measurements are those given. */
@NullMarked
package auricle.fitting;

import org.jspecify.annotations.NullMarked;
