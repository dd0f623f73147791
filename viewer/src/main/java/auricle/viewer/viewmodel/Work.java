package auricle.viewer.viewmodel;

import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import java.util.List;

/**
 * What is being done, and whether the picture is that of a state of rest.
 *
 * @param state in short
 * @param words a sentence for the user
 * @param share of the work that is done, 0 to 1
 * @param reasons sentences on what is wrong, if anything is
 */
public record Work(State state, String words, double share, List<String> reasons) {
  /** Where the work stands. */
  public enum State {
    /** Nothing was asked yet. */
    READY,
    /** The picture is older than the plan; a newer one is being worked out. */
    SOLVING,
    /** The picture is a state of rest of the plan. */
    AT_REST,
    /** The solver found no state of rest. */
    NOT_AT_REST,
    /** The user stopped it; the picture is older than the plan. */
    STOPPED,
    /** The plan cannot be worked out. */
    REFUSED
  }

  /** Keeps its own copy. */
  public Work {
    reasons = List.copyOf(reasons);
  }

  static Work ready() {
    return new Work(State.READY, "nothing worked out yet", 0, List.of());
  }

  static Work solving(String words, double share) {
    return new Work(State.SOLVING, words, share, List.of());
  }

  static Work stopped() {
    return new Work(State.STOPPED, "stopped: the picture is older than the plan", 0, List.of());
  }

  static Work refused(List<String> reasons) {
    return new Work(State.REFUSED, "cannot be worked out", 0, reasons);
  }

  /** The end of a run. */
  static Work of(Rehearsed r) {
    List<String> open =
        r.course().stream()
            .filter(m -> !m.outcome().converged())
            .map(m -> upper(m.label()) + ": " + m.outcome().words())
            .toList();
    return open.isEmpty()
        ? new Work(State.AT_REST, "at rest: every force is balanced", 1, List.of())
        : new Work(State.NOT_AT_REST, "not at rest: no balance was found", 1, open);
  }

  private static String upper(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /** Whether a moment of the result may be shown as one of rest. */
  static boolean rest(Moment moment) {
    return moment.outcome().converged();
  }
}
