package auricle.surgery;

import auricle.energy.ThreadLaw;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where a body came to rest, and how its threads were tied then. Immutable. */
public final class RestState {
  private final double[] energy;
  private final Map<String, List<ThreadLaw>> laws = new HashMap<>();

  RestState(double[] energy, List<BodyThread> threads) {
    this.energy = energy.clone();
    for (BodyThread thread : threads) {
      laws.computeIfAbsent(thread.name(), n -> new ArrayList<>()).add(thread.thread().law());
    }
  }

  double[] energy() {
    return energy.clone();
  }

  /** Ties threads of the same names, in their order, as they were. */
  void tie(List<BodyThread> threads) {
    Map<String, Integer> next = new HashMap<>();
    for (BodyThread thread : threads) {
      int i = next.merge(thread.name(), 1, Integer::sum) - 1;
      List<ThreadLaw> known = laws.getOrDefault(thread.name(), List.of());
      if (i < known.size()) {
        thread.follow(known.get(i));
      }
    }
  }
}
