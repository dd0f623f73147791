package auricle.viewer.task;

import auricle.plan.EarCase;
import java.util.ArrayList;
import java.util.List;

/**
 * One ear and plan, worked out.
 *
 * @param ear what was worked out
 * @param reach how much of it
 * @param map where places of the plan lie on the triangles
 * @param steps before first, then after each step
 * @param times after the operation, ascending; empty while they are not worked out
 * @param bands spread at each time; empty where none was worked out
 * @param reactions what each dose does at the end; empty until they are asked for
 * @param cautions in words
 * @param basis what the figures rest on, a line each
 */
public record Rehearsed(
    EarCase ear,
    Reach reach,
    EarMap map,
    List<Moment> steps,
    List<Moment> times,
    List<Band> bands,
    List<Reaction> reactions,
    List<Caution> cautions,
    List<String> basis) {
  /** How much of an ear and plan has been worked out. */
  public enum Reach {
    /** The ear before its plan; the only step there is. */
    BEFORE,
    /**
     * The end of the plan where it is foreseen, not at rest yet; the steps between are those of the
     * plan before it was changed.
     */
    FORESEEN,
    /** The end of the plan; the steps between are those of the plan before it was changed. */
    END,
    /** The first steps of the plan; those after them are still to be worked out. */
    PART,
    /** Every step of the plan. */
    STEPS,
    /** The year after it too. */
    YEAR
  }

  /** Keeps its own copies. */
  public Rehearsed {
    steps = List.copyOf(steps);
    times = List.copyOf(times);
    bands = List.copyOf(bands);
    reactions = List.copyOf(reactions);
    cautions = List.copyOf(cautions);
    basis = List.copyOf(basis);
  }

  /** The same with what each dose does. */
  public Rehearsed with(List<Reaction> found) {
    return new Rehearsed(ear, reach, map, steps, times, bands, found, cautions, basis);
  }

  /** The same with the year after it. */
  public Rehearsed with(List<Moment> after, List<Band> spread) {
    return new Rehearsed(ear, Reach.YEAR, map, steps, after, spread, reactions, cautions, basis);
  }

  /** Whether every step is of this plan. */
  public boolean whole() {
    return reach == Reach.STEPS || reach == Reach.YEAR;
  }

  /** Whether steps at the end of the plan are missing. */
  public boolean onTheWay() {
    return reach == Reach.PART;
  }

  /** Whether a moment is of this plan, not of the one before doses were turned. */
  public boolean current(Moment moment) {
    boolean endAlone = reach == Reach.END || reach == Reach.FORESEEN;
    return !endAlone || moment.equals(tied()) || moment.equals(before());
  }

  /** The ear before the operation. */
  public Moment before() {
    return steps.get(0);
  }

  /** The ear at the end of the operation, or as far as it has been worked out. */
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
