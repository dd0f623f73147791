package auricle.equilibrium;

import auricle.numerics.Outcome;
import java.util.List;

/**
 * States of rest in the order in which they were reached.
 *
 * @param outcome converged if every requested state was reached
 * @param reason the same in words
 * @param states all states at rest, those in between too
 * @param events snaps and limit points
 * @param failures how the attempts ended that did not come to rest, in words
 */
public record LoadPath(
    Outcome outcome,
    String reason,
    List<EquilibriumState> states,
    List<PathEvent> events,
    List<String> failures) {
  /** Keeps its own copies of the lists. */
  public LoadPath {
    states = List.copyOf(states);
    events = List.copyOf(events);
    failures = List.copyOf(failures);
  }

  /** The states that were asked for. */
  public List<EquilibriumState> requested() {
    return states.stream().filter(EquilibriumState::requested).toList();
  }

  /** The last state at rest. */
  public EquilibriumState last() {
    return states.get(states.size() - 1);
  }

  /** Newton iterations of the states at rest, together. */
  public int iterations() {
    return states.stream().mapToInt(s -> s.solution().iterations().size()).sum();
  }
}
