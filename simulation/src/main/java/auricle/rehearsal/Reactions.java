package auricle.rehearsal;

import auricle.diagnostics.BadInputException;
import auricle.equilibrium.Sensitivities;
import auricle.measurement.EarMeasurer;
import auricle.measurement.Figure;
import auricle.measurement.Measures;
import auricle.measurement.NamedValue;
import auricle.plan.Dose;
import auricle.plan.Operation;
import auricle.plan.Tie;
import auricle.plan.TiedOperation;
import auricle.surgery.EarBody;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Rates of all measurements by the doses of a plan at its end, du/dp = −K⁻¹ ∂g/∂p with the factor
 * of the state at rest; ∂g/∂p by differences of the forces at the same place, the measurements by
 * differences along du/dp.
 *
 * <p>Forces can jump: a thread goes slack or taut, a bite passes to the next triangle. So a rate is
 * taken from more and from less of the dose, over shorter and shorter steps, until both agree; if
 * they never do, there is no rate, and the reaction says so.
 *
 * <p>Threads keep the length that they were tied to: what a dose does to the knot of a thread tied
 * at a tension later on is left out, and rates by such tensions are not given.
 */
final class Reactions {
  /** Differences are taken over these shares of a dose's control step, the first that will do. */
  private static final List<Double> SHARES = List.of(0.05, 0.01, 0.002);

  private static final String WITHOUT =
      "no rate here: more and less of it act differently, as where a thread goes slack or taut";

  /** Farthest that any unknown moves when a measurement is differenced, mm or rad. */
  private static final double MOTION = 1e-3;

  private final EarBody body;
  private final List<Operation> operations;
  private final EarMeasurer measurer;
  private final Sensitivities sensitivities;
  private final double[] present;

  Reactions(EarBody body, List<Operation> operations) throws BadInputException {
    this.body = body;
    this.operations = operations;
    measurer = new EarMeasurer(body.auricle());
    sensitivities = body.sensitivities();
    present = forces(operations);
  }

  /** A reaction for every dose but tensions; none if it is cancelled. */
  List<Reaction> all(RehearsalWatcher watcher) throws BadInputException {
    List<Reaction> reactions = new ArrayList<>();
    for (int i = 0; i < operations.size(); i++) {
      watcher.progress("reactions of " + operations.get(i).name(), (double) i / operations.size());
      for (Dose dose : operations.get(i).doses()) {
        if (watcher.cancelled()) {
          return List.of();
        }
        if (!tension(operations.get(i), dose)) {
          reactions.add(reaction(i, dose));
        }
      }
    }
    return reactions;
  }

  private static boolean tension(Operation operation, Dose dose) {
    return operation instanceof TiedOperation tied
        && tied.tie() instanceof Tie.Tension
        && dose.key().equals(tied.tie().dose().key());
  }

  Reaction reaction(int i, Dose dose) throws BadInputException {
    Map<Figure, Double> rates = Map.of();
    for (int k = 0; k < SHARES.size() && rates.isEmpty(); k++) {
      double h = SHARES.get(k) * dose.step();
      OneSided more = new OneSided(rates(i, dose, h), dose.step());
      rates = more.meanWith(rates(i, dose, -h)).orElse(Map.of());
    }
    String without = rates.isEmpty() ? WITHOUT : "";
    return new Reaction(operations.get(i).name(), dose.key(), dose.unit(), rates, without);
  }

  private Map<Figure, Double> rates(int i, Dose dose, double change) throws BadInputException {
    List<Operation> other = new ArrayList<>(operations);
    other.set(i, operations.get(i).withDose(dose.key(), dose.value() + change));
    double[] rate = forces(other);
    for (int k = 0; k < rate.length; k++) {
      rate[k] = (rate[k] - present[k]) / change;
    }
    return figures(sensitivities.rate(rate));
  }

  private double[] forces(List<Operation> other) throws BadInputException {
    return body.forcesUnder(other);
  }

  private Map<Figure, Double> figures(double[] motion) {
    double most = 1e-12;
    for (double m : motion) {
      most = Math.max(most, Math.abs(m));
    }
    double t = MOTION / most;
    List<NamedValue> up = moved(motion, t).figures();
    List<NamedValue> down = moved(motion, -t).figures();
    Map<Figure, Double> rates = new EnumMap<>(Figure.class);
    for (int k = 0; k < up.size(); k++) {
      double rate = (up.get(k).value() - down.get(k).value()) / (2 * t);
      Figure.ofKey(up.get(k).key()).ifPresent(figure -> rates.put(figure, rate));
    }
    return rates;
  }

  private Measures moved(double[] motion, double t) {
    double[] u = body.unknowns().clone();
    for (int k = 0; k < u.length; k++) {
      u[k] += t * motion[k];
    }
    return measurer.measure(u);
  }
}
