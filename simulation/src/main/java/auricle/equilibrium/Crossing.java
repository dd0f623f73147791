package auricle.equilibrium;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A level passed within a step.
 *
 * @param level what was passed
 * @param fraction about where in the step
 */
record Crossing(PathLevel level, double fraction) {
  /** Levels passed from a saved state to the present one, in the order of passing. */
  static List<Crossing> of(
      double[] before, TotalEnergy energy, PathLevel end, List<PathLevel> outputs) {
    List<PathLevel> levels = new ArrayList<>(outputs);
    if (!levels.contains(end)) {
      levels.add(end);
    }
    double[] after = energy.save();
    double[] to = levels.stream().mapToDouble(level -> level.at(energy)).toArray();
    energy.restore(before);
    List<Crossing> crossings = new ArrayList<>();
    for (int k = 0; k < to.length; k++) {
      PathLevel level = levels.get(k);
      double from = level.at(energy);
      if (level.between(from, to[k])) {
        crossings.add(new Crossing(level, (level.value() - from) / (to[k] - from)));
      }
    }
    energy.restore(after);
    crossings.sort(Comparator.comparingDouble(Crossing::fraction));
    return crossings;
  }
}
