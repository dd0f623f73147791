package auricle.report.picture;

import auricle.measurement.Measures;
import auricle.rehearsal.DeformedEar;

/**
 * The ear at one time.
 *
 * @param shape its shape
 * @param measures what was measured on it
 */
public record Moment(DeformedEar shape, Measures measures) {}
