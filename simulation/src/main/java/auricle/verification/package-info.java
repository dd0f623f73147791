/** The benchmark set: published and computed reference values, and the run that compares. */
@NullMarked
package auricle.verification;

import org.jspecify.annotations.NullMarked;
