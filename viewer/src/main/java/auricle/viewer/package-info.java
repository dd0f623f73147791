/**
 * The three-dimensional viewer. It draws what {@code simulation} computes and holds no mechanics.
 */
@NullMarked
package auricle.viewer;

import org.jspecify.annotations.NullMarked;
