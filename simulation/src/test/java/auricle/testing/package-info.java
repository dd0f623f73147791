/** What the tests of every package share. */
@NullMarked
package auricle.testing;

import org.jspecify.annotations.NullMarked;
