/**
 * Findings: what is wrong with an input, where, what was found, what was expected, and the remedy.
 */
@NullMarked
package auricle.diagnostics;

import org.jspecify.annotations.NullMarked;
