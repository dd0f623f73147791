/** Results out: VTU, CSV and JSON, written atomically. */
@NullMarked
package auricle.report;

import org.jspecify.annotations.NullMarked;
