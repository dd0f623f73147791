/**
 * Smooth functions, trust-region Newton, sparse symmetric factorisation, vertex ordering and the
 * derivative check. Knows nothing of shells; no type of a linear algebra library leaves it.
 */
@NullMarked
package auricle.numerics;

import org.jspecify.annotations.NullMarked;
