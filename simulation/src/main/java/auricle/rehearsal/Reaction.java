package auricle.rehearsal;

import auricle.measurement.Figure;
import java.util.Map;

/**
 * What one dose of the plan does to every measurement, per unit of the dose, at the end of the
 * plan.
 *
 * @param operation name of the operation
 * @param dose key of the dose
 * @param unit of the dose
 * @param rates change of each figure, in its unit, per unit of the dose; empty if there is no rate
 * @param without why there is no rate, in words; empty if there is one
 */
public record Reaction(
    String operation, String dose, String unit, Map<Figure, Double> rates, String without) {
  /** Keeps its own copy of the rates. */
  public Reaction {
    rates = Map.copyOf(rates);
  }
}
