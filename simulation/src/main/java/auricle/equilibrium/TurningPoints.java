package auricle.equilibrium;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Watches a path for limit points and changes of stability. */
final class TurningPoints {
  private final List<PathEvent> events = new ArrayList<>();
  private @Nullable EquilibriumState last;
  private @Nullable PathTangent lastTangent;

  /** Told of every state in order, with the tangent there. */
  void pass(EquilibriumState state, PathTangent tangent) {
    EquilibriumState from = last;
    PathTangent before = lastTangent;
    if (from != null && before != null) {
      int lost = state.solution().negativePivots() - from.solution().negativePivots();
      if (before.load() * tangent.load() < 0) {
        events.add(limit(from, state, before.load() > 0));
      } else if (lost != 0) {
        events.add(change(from, state, lost));
      }
    }
    last = state;
    lastTangent = tangent;
  }

  private static PathEvent limit(EquilibriumState from, EquilibriumState to, boolean maximum) {
    String words =
        "limit point between load factor %.6g and %.6g: the %s load on this part of the path; %s"
            .formatted(
                from.loadFactor(), to.loadFactor(), maximum ? "greatest" : "least", stability(to));
    return new PathEvent(PathEvent.Kind.LIMIT_POINT, from.loadFactor(), to.loadFactor(), words);
  }

  private static PathEvent change(EquilibriumState from, EquilibriumState to, int lost) {
    String words =
        "between load factor %.6g and %.6g %d mode(s) %s stability while the load went on the same way: paths branch here; %s"
            .formatted(
                from.loadFactor(),
                to.loadFactor(),
                Math.abs(lost),
                lost > 0 ? "lost" : "regained",
                stability(to));
    return new PathEvent(
        PathEvent.Kind.STABILITY_CHANGE, from.loadFactor(), to.loadFactor(), words);
  }

  private static String stability(EquilibriumState state) {
    int negative = state.solution().negativePivots();
    return negative == 0
        ? "stable beyond it"
        : "unstable beyond it (%d mode(s))".formatted(negative);
  }

  List<PathEvent> events() {
    return events;
  }
}
