package auricle.viewer.task;

import auricle.plan.EarCase;
import java.util.ArrayList;
import java.util.List;

/**
 * One ear and plan, worked out.
 *
 * @param ear what was worked out
 * @param map where places of the plan lie on the triangles
 * @param steps before first, then after each step
 * @param times after the operation, ascending; empty while they are not worked out
 * @param bands spread at each time; empty where none was worked out
 * @param cautions in words
 * @param basis what the figures rest on, a line each
 */
public record Rehearsed(
    EarCase ear,
    EarMap map,
    List<Moment> steps,
    List<Moment> times,
    List<Band> bands,
    List<Caution> cautions,
    List<String> basis) {
  /** Keeps its own copies. */
  public Rehearsed {
    steps = List.copyOf(steps);
    times = List.copyOf(times);
    bands = List.copyOf(bands);
    cautions = List.copyOf(cautions);
    basis = List.copyOf(basis);
  }

  /** The ear before the operation. */
  public Moment before() {
    return steps.get(0);
  }

  /** The ear at the end of the operation. */
  public Moment tied() {
    return steps.get(steps.size() - 1);
  }

  /** Steps, then times. */
  public List<Moment> course() {
    List<Moment> all = new ArrayList<>(steps);
    all.addAll(times);
    return all;
  }

  /** Whether every state shown is one of rest. */
  public boolean converged() {
    return course().stream().allMatch(m -> m.outcome().converged());
  }
}
