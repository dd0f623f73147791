package auricle.viewer.viewmodel;

import auricle.diagnostics.Finding;
import auricle.viewer.task.Rehearsed;
import java.util.List;
import java.util.Optional;

/**
 * What is being done, and whether the picture is that of a state of rest.
 *
 * @param state in short
 * @param words a sentence for the user: what the picture is, and what is being worked out
 * @param share of the work that is done, 0 to 1; 0 if it is not known
 * @param reasons sentences on what is wrong, if anything is
 * @param findings the same with the places that they are about, where they have one
 */
public record Work(
    State state, String words, double share, List<String> reasons, List<Finding> findings) {
  /** Where the work stands. */
  public enum State {
    /** Nothing was asked yet. */
    READY,
    /** Something of the plan is still being worked out. */
    SOLVING,
    /** The picture is a state of rest of the plan. */
    AT_REST,
    /** The solver found no state of rest. */
    NOT_AT_REST,
    /** The user stopped it. */
    STOPPED,
    /** The plan cannot be worked out. */
    REFUSED
  }

  /** Keeps its own copies. */
  public Work {
    reasons = List.copyOf(reasons);
    findings = List.copyOf(findings);
  }

  private static Work plain(State state, String words, double share, List<String> reasons) {
    return new Work(state, words, share, reasons, List.of());
  }

  static Work ready() {
    return plain(State.READY, "Nothing worked out yet", 0, List.of());
  }

  /**
   * Work under way.
   *
   * @param doing in words; empty for what follows by itself
   * @param shown what there is of this very plan; empty if the picture is of an older one
   */
  static Work solving(String doing, double share, Optional<Rehearsed> shown) {
    String what =
        shown.map(Work::sofar).orElse("Working out the plan; the picture is of the one before");
    String now = doing.isEmpty() ? " …" : ": " + doing + " …";
    return plain(State.SOLVING, what + now, share < 1 ? share : 0, List.of());
  }

  private static String sofar(Rehearsed r) {
    return switch (r.reach()) {
      case BEFORE -> "Before the plan; working out its steps";
      case FORESEEN -> "Foreseen, not at rest; figures are older";
      case END -> "Tied, at rest; working out the steps between";
      case PART -> done(r) + " at rest, as far as “" + r.tied().label() + "”; working out the rest";
      case STEPS -> "Tied, at rest; working out the year";
      case YEAR -> "Tied and over a year, at rest; working out more";
    };
  }

  private static String done(Rehearsed r) {
    return r.steps().size() - 1 + " of " + r.ear().plan().enabled().size() + " steps";
  }

  /** Ended by the user; what is there of this very plan, if anything. */
  static Work stopped(Optional<Rehearsed> shown) {
    String words =
        shown
            .map(r -> "Stopped; shown is " + (r.converged() ? "" : "not at rest: ") + reached(r))
            .orElse("Stopped: the picture is older than the plan");
    return plain(State.STOPPED, words, 0, List.of());
  }

  private static String reached(Rehearsed r) {
    return switch (r.reach()) {
      case BEFORE -> "the ear before the plan";
      case FORESEEN -> "the end of the plan as it is foreseen";
      case END -> "the end of the plan";
      case PART -> "the plan as far as “" + r.tied().label() + "”";
      case STEPS -> "the plan without the year";
      case YEAR -> "the plan and the year";
    };
  }

  static Work refused(List<Finding> findings) {
    List<String> lines = findings.stream().map(Finding::line).toList();
    return new Work(State.REFUSED, "Cannot be worked out", 0, lines, findings);
  }

  static Work broken(String words) {
    return plain(State.REFUSED, "Cannot be worked out", 0, List.of(words));
  }

  /** The end of a run. */
  static Work of(Rehearsed r) {
    List<String> open =
        r.course().stream()
            .filter(m -> !m.outcome().converged())
            .map(m -> upper(m.label()) + ": " + m.outcome().words())
            .toList();
    return open.isEmpty()
        ? plain(State.AT_REST, "At rest: every force is balanced", 1, List.of())
        : plain(State.NOT_AT_REST, "Not at rest: no balance was found", 1, open);
  }

  private static String upper(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
