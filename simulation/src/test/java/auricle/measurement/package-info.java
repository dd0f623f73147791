/** Tests of the measurements. */
@NullMarked
package auricle.measurement;

import org.jspecify.annotations.NullMarked;
