package auricle.analysis;

import auricle.numerics.NewtonIteration;
import java.util.List;

/**
 * One load step.
 *
 * @param number from 1
 * @param loadFactor share of the loads that acts
 * @param converged whether it is an equilibrium to the stated tolerance
 * @param outcome how the solution ended: converged, stalled, diverged, cancelled
 * @param reason the same in words
 * @param probes values of the probes, in the order of the model; NaN where there is none
 * @param iterations the iteration table
 */
public record StepResult(
    int number,
    double loadFactor,
    boolean converged,
    String outcome,
    String reason,
    List<Double> probes,
    List<NewtonIteration> iterations) {}
