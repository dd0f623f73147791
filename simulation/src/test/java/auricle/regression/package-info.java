/**
 * What the program itself gave earlier, to a tiny tolerance: no value here says that a figure is
 * right, only that it has not moved unnoticed. Values that others published are elsewhere.
 */
@NullMarked
package auricle.regression;

import org.jspecify.annotations.NullMarked;
