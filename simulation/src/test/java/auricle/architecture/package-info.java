/** What holds of the code as a whole: the order of the packages, their limits, and sizes. */
@NullMarked
package auricle.architecture;

import org.jspecify.annotations.NullMarked;
