package auricle.viewer.task;

import auricle.measurement.Figure;
import auricle.plan.Dose;
import auricle.plan.Operation;
import auricle.plan.Plan;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Rates by doses as changes for one turn of a control. */
final class Doses {
  private Doses() {}

  /**
   * The reactions of a plan's doses, in its order; rates of doses it does not have are left out.
   */
  static List<Reaction> reactions(Plan plan, List<auricle.rehearsal.Reaction> rates) {
    List<Reaction> found = new ArrayList<>();
    for (auricle.rehearsal.Reaction rate : rates) {
      dose(plan, rate.operation(), rate.dose())
          .ifPresent(
              d ->
                  found.add(
                      new Reaction(
                          rate.operation(), d.key(), d.label(), per(d), changes(rate, d))));
    }
    return found;
  }

  private static Optional<Dose> dose(Plan plan, String operation, String key) {
    return plan.enabled().stream()
        .filter(o -> o.name().equals(operation))
        .map(Operation::doses)
        .flatMap(List::stream)
        .filter(d -> d.key().equals(key))
        .findFirst();
  }

  private static Map<Figure, Double> changes(auricle.rehearsal.Reaction rate, Dose dose) {
    Map<Figure, Double> changes = new EnumMap<>(Figure.class);
    rate.rates().forEach((figure, perUnit) -> changes.put(figure, perUnit * dose.step()));
    return changes;
  }

  private static String per(Dose dose) {
    String unit = dose.unit().startsWith("of") ? "of the thickness" : dose.unit();
    return String.format(Locale.ROOT, "+%.2g %s", dose.step(), unit).strip();
  }
}
