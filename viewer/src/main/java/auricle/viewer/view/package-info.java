/** The screens: what is seen of the view models, and what hands do to them. */
@NullMarked
package auricle.viewer.view;

import org.jspecify.annotations.NullMarked;
