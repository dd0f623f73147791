package auricle.assessment;

import auricle.anatomy.Level;
import auricle.measurement.Figure;

/**
 * One reason why a third of the ear is at fault before the plan.
 *
 * @param level the third
 * @param words what is at fault, in the trade's words
 * @param figure the measurement that says so
 * @param measured its value, in its unit
 * @param limit what it is held against; the fault is a value above it
 */
public record Fault(Level level, String words, Figure figure, double measured, Limit limit) {}
