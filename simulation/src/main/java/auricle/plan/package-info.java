/**
 * What is to be done to an ear, as immutable data: operations in order, their doses by name, the
 * target, the tissue chosen; checked in words, without any mechanics.
 */
@NullMarked
package auricle.plan;

import org.jspecify.annotations.NullMarked;
