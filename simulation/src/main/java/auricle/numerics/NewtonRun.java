package auricle.numerics;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One minimisation under way; see {@link NewtonMinimiser} for the method. */
final class NewtonRun {
  /** Moved farther than this many times its size, a body is on its way to infinity. */
  private static final double ESCAPED = 1e3;

  private final Linearisation point;
  private final NewtonSettings settings;
  private final NewtonMonitor monitor;
  private final double[] x;
  private final NewtonStep step;
  private final Convergence convergence;
  private final List<NewtonIteration> table = new ArrayList<>();

  NewtonRun(Linearisation point, double[] x, NewtonSettings settings, NewtonMonitor monitor) {
    this.point = point;
    this.settings = settings;
    this.monitor = monitor;
    this.x = x;
    step = new NewtonStep(point, x, settings);
    convergence = new Convergence(point, settings);
  }

  NewtonResult run() {
    if (!point.evaluate(x)) {
      String reason = "the energy or its forces at the start are not finite numbers";
      return result(Outcome.DIVERGED, reason, point.value(), point.residual());
    }
    step.checkpoint();
    while (true) {
      NewtonIteration begun = begin();
      NewtonResult end = advance();
      NewtonIteration line = complete(begun, end == null);
      table.add(line);
      if (end != null) {
        return withTable(end);
      }
      if (!monitor.proceed(line)) {
        return withTable(giveUp(Outcome.CANCELLED, "cancelled on request"));
      }
    }
  }

  private NewtonIteration begin() {
    boolean checkpoint = step.atCheckpoint();
    if (!point.kept()) {
      point.factorize(settings.acceptUnstable() || step.bold());
    }
    ShiftedFactor f = point.factor();
    return new NewtonIteration(
        table.size(),
        point.value(),
        point.residual(),
        0,
        f.shift(),
        f.negativePivots(),
        point.kept() ? 0 : f.trials(),
        checkpoint);
  }

  private NewtonIteration complete(NewtonIteration begun, boolean moved) {
    return new NewtonIteration(
        begun.iteration(),
        begun.value(),
        begun.residual(),
        moved ? step.length() : 0,
        begun.shift(),
        begun.negativePivots(),
        begun.factorisations(),
        begun.accepted());
  }

  /** One step on; the result if there is none. */
  private @Nullable NewtonResult advance() {
    Convergence.Verdict verdict = convergence.judge(x);
    String words = point.words(convergence.tolerance());
    boolean solved = verdict == Convergence.Verdict.SOLVED && step.notAbove();
    if (!solved && table.size() >= settings.mostIterations()) {
      return giveUp(
          Outcome.STALLED,
          "not at rest after %d iterations: %s".formatted(settings.mostIterations(), words));
    }
    if (verdict != Convergence.Verdict.GO_ON) {
      return stationary(verdict);
    }
    if (!step.forward(convergence.step())) {
      return giveUp(Outcome.STALLED, "no step lowers the energy any more: " + words);
    }
    return escaped();
  }

  private @Nullable NewtonResult stationary(Convergence.Verdict verdict) {
    String words = point.words(convergence.tolerance());
    if (!step.notAbove()) {
      return step.retreat()
          ? null
          : giveUp(Outcome.STALLED, "no step lowers the energy any more: " + words);
    }
    return switch (verdict) {
      case MECHANISM -> giveUp(Outcome.STALLED, convergence.words());
      case SADDLE ->
          step.escape()
              ? null
              : giveUp(
                  Outcome.STALLED,
                  "an unstable equilibrium that no small motion leads away from: " + words);
      default -> solved(words);
    };
  }

  private NewtonResult solved(String words) {
    step.checkpoint();
    String kind = point.negativePivots() == 0 ? "at rest: " : "at an unstable equilibrium: ";
    return result(Outcome.CONVERGED, kind + words, point.value(), point.residual());
  }

  private @Nullable NewtonResult escaped() {
    double most = ESCAPED * point.function().extent();
    if (!(step.travelled() <= most)) {
      return giveUp(
          Outcome.DIVERGED,
          "moved by %.3g, far beyond the size of the whole (%.3g): supports are missing, or the load is more than can be carried"
              .formatted(step.travelled(), point.function().extent()));
    }
    return null;
  }

  private NewtonResult giveUp(Outcome outcome, String reason) {
    step.best().recall(point.function(), x);
    return result(outcome, reason, step.best().value(), step.best().residual());
  }

  private NewtonResult result(Outcome outcome, String reason, double value, double residual) {
    int negative = point.negativePivots();
    return new NewtonResult(
        outcome, reason, value, residual, convergence.tolerance(), negative, table);
  }

  private NewtonResult withTable(NewtonResult r) {
    return new NewtonResult(
        r.outcome(), r.reason(), r.value(), r.residual(), r.tolerance(), r.negativePivots(), table);
  }
}
