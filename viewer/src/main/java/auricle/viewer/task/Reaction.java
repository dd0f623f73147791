package auricle.viewer.task;

import java.util.List;

/**
 * What one dose does: change of figures for a small change of the dose, from two more solutions.
 *
 * @param operation name of the step
 * @param dose key of the dose
 * @param label in words
 * @param per what the changes are for: "per 0.1 N"
 * @param changes one for each figure asked for, in its unit
 * @param converged whether both solutions are states of rest
 */
public record Reaction(
    String operation,
    String dose,
    String label,
    String per,
    List<Double> changes,
    boolean converged) {
  /** Keeps its own copy. */
  public Reaction {
    changes = List.copyOf(changes);
  }
}
