/** What is kept outside the window: settings, recovery of unsaved work, pictures and shapes. */
@NullMarked
package auricle.viewer.store;

import org.jspecify.annotations.NullMarked;
