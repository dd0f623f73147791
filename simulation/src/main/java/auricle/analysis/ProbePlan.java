package auricle.analysis;

import java.util.List;

/** The probes of a model, ready to be evaluated. */
final class ProbePlan {
  private final List<Reading> readings;
  private final List<FollowedTurn> turns;

  ProbePlan(List<Probe> probes, ProbeSite site) {
    readings = probes.stream().map(p -> p.reading(site)).toList();
    turns = List.copyOf(site.turns());
  }

  /** Turns that must be followed from state to state. */
  List<FollowedTurn> turns() {
    return turns;
  }

  /** All probes at a state, in the order of the model. */
  List<Double> evaluate(ShellView view) {
    return readings.stream().map(r -> r.of(view)).toList();
  }

  /** As many times no number as there are probes. */
  List<Double> evaluateNothing() {
    return readings.stream().map(r -> Double.NaN).toList();
  }
}
