/** Thin commands over the packages above; the only place that prints. */
@NullMarked
package auricle.cli;

import org.jspecify.annotations.NullMarked;
