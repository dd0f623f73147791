/** The pictures of a rehearsal: sections, outlines, changes by step, course over time. */
@NullMarked
package auricle.report.picture;

import org.jspecify.annotations.NullMarked;
