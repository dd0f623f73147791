/** Tests of the assessment. */
@NullMarked
package auricle.assessment;

import org.jspecify.annotations.NullMarked;
