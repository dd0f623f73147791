package auricle.report.picture;

import auricle.measurement.Measures;

/**
 * A state of the ear in a chart of steps.
 *
 * @param label what was done, or "before"
 * @param measures after it
 * @param converged whether it is a state of rest
 */
public record StepRow(String label, Measures measures, boolean converged) {}
