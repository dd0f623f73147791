/** What the screens show and do, without a toolkit: properties, lists and commands. */
@NullMarked
package auricle.viewer.viewmodel;

import org.jspecify.annotations.NullMarked;
