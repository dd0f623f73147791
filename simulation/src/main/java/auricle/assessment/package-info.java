/**
 * What a practitioner would say of the measurements: which thirds are at fault, how the result
 * stands to the balance aimed at, what to beware of. Every sentence has a measured value, a limit
 * and the limit's source.
 */
@NullMarked
package auricle.assessment;

import org.jspecify.annotations.NullMarked;
