/** Puts the viewer together and starts it. */
@NullMarked
package auricle.viewer.app;

import org.jspecify.annotations.NullMarked;
