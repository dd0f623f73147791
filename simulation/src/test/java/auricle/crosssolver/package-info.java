/**
 * The same shell in an independent solver. Models are exported as one layer of quadratic wedges,
 * which is what CalculiX itself makes of a six-node shell, so that supports stand on nodes through
 * the thickness.
 */
@NullMarked
package auricle.crosssolver;

import org.jspecify.annotations.NullMarked;
