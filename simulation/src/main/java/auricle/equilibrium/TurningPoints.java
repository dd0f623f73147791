package auricle.equilibrium;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Watches a path for limit points and changes of stability. */
final class TurningPoints {
  private final List<PathEvent> events = new ArrayList<>();
  private @Nullable Passed last;

  private record Passed(EquilibriumState state, PathTangent tangent) {}

  /** Told of every state in order, with the tangent there. */
  void pass(EquilibriumState state, PathTangent tangent) {
    if (last != null) {
      EquilibriumState from = last.state();
      PathTangent before = last.tangent();
      int lost = state.solution().negativePivots() - from.solution().negativePivots();
      if (before.load() * tangent.load() < 0) {
        events.add(limit(from, before, state, tangent));
      } else if (lost != 0) {
        events.add(change(from, state, lost));
      }
    }
    last = new Passed(state, tangent);
  }

  private static PathEvent limit(
      EquilibriumState from, PathTangent before, EquilibriumState to, PathTangent after) {
    String words =
        "limit point near load factor %.5g, the %s on this part of the path, passed between %.6g and %.6g; %s"
            .formatted(
                extreme(from, before, to, after),
                before.load() > 0 ? "greatest" : "least",
                from.loadFactor(),
                to.loadFactor(),
                stability(to));
    return new PathEvent(PathEvent.Kind.LIMIT_POINT, from.loadFactor(), to.loadFactor(), words);
  }

  /** Where λ turns on the cubic through both states with the slopes of both tangents. */
  private static double extreme(
      EquilibriumState from, PathTangent before, EquilibriumState to, PathTangent after) {
    double arc = before.arc(from, to);
    double best = from.loadFactor();
    for (int i = 1; i <= 100; i++) {
      double value =
          Crossing.cubic(
              from.loadFactor(),
              arc * before.load(),
              to.loadFactor(),
              arc * after.load(),
              i / 100.0);
      best = before.load() > 0 ? Math.max(best, value) : Math.min(best, value);
    }
    return best;
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
