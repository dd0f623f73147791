/**
 * What a clinician measures on an ear, read from the coordinates of its mesh; each measurement is
 * defined once, here, and described in THEORY.md, "Measurements".
 */
@NullMarked
package auricle.measurement;

import org.jspecify.annotations.NullMarked;
