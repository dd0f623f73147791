package auricle.viewer.task;

import auricle.measurement.Figure;
import java.util.List;
import java.util.Map;

/**
 * What one dose does at the end of a plan: change of figures for a small change of the dose, by the
 * stiffness at rest.
 *
 * @param operation name of the step
 * @param dose key of the dose
 * @param label in words
 * @param per what the changes are for: "+0.1 N"
 * @param changes of the figures, each in its unit
 */
public record Reaction(
    String operation, String dose, String label, String per, Map<Figure, Double> changes) {
  /** Keeps its own copy. */
  public Reaction {
    changes = Map.copyOf(changes);
  }

  /** Change of a figure; NaN if it is not known. */
  public double of(Figure figure) {
    return changes.getOrDefault(figure, Double.NaN);
  }

  /** The greatest change of these figures, + or −, in their units. */
  public double most(List<Figure> figures) {
    return figures.stream()
        .mapToDouble(f -> Math.abs(of(f)))
        .filter(Double::isFinite)
        .max()
        .orElse(0);
  }
}
