/** Tests of the fit of an ear to its measurements. */
@NullMarked
package auricle.fitting;

import org.jspecify.annotations.NullMarked;
