/**
 * The one entry point of the main job: an ear and a plan in, the measured rest states after every
 * step out, with tensions, strains, outcomes in words and where every figure came from.
 */
@NullMarked
package auricle.rehearsal;

import org.jspecify.annotations.NullMarked;
