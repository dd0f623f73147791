/**
 * Pages of lines, areas and labels in mm, written as SVG and PNG without a display or its fonts.
 */
@NullMarked
package auricle.report.drawing;

import org.jspecify.annotations.NullMarked;
