package auricle.rehearsal;

import auricle.measurement.Figure;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Rates of the figures by a dose, taken to one side.
 *
 * @param rates in the figures' units, per unit of the dose
 * @param step of the dose's control
 */
record OneSided(Map<Figure, Double> rates, double step) {
  /** What the two sides may differ by, as a share of the greater. */
  private static final double SHARE = 0.25;

  /** What they may differ by in any case for a step of the control, mm or deg. */
  private static final double NOTHING = 0.02;

  /** Figures that are not smooth in the shape. */
  private static final Set<Figure> CORNERED =
      EnumSet.of(
          Figure.RIM_SMALLEST_RADIUS,
          Figure.RIM_KINKS,
          Figure.FOLD_SMALLEST_RADIUS,
          Figure.FOLD_KINKS);

  OneSided {
    rates = Map.copyOf(rates);
  }

  /** The mean with the rates to the other side; none where the two do not agree. */
  Optional<Map<Figure, Double>> meanWith(Map<Figure, Double> other) {
    Map<Figure, Double> mean = new EnumMap<>(Figure.class);
    for (Figure figure : rates.keySet()) {
      double here = rates.getOrDefault(figure, Double.NaN);
      double there = other.getOrDefault(figure, Double.NaN);
      double allowed = Math.max(NOTHING / step, SHARE * Math.max(Math.abs(here), Math.abs(there)));
      if (!CORNERED.contains(figure) && !(Math.abs(here - there) <= allowed)) {
        return Optional.empty();
      }
      mean.put(figure, (here + there) / 2);
    }
    return Optional.of(mean);
  }
}
