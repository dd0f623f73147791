package auricle.healing;

import auricle.anatomy.Level;
import auricle.energy.ElasticThread;
import auricle.energy.ThreadLaw;
import auricle.equilibrium.TotalEnergy;
import auricle.measurement.EarMeasurer;
import auricle.measurement.Figure;
import auricle.measurement.Measures;
import auricle.numerics.NewtonMinimiser;
import auricle.plan.Operation;
import auricle.surgery.BodyThread;
import auricle.surgery.EarBody;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Follows an operated ear over time. */
public final class EarHealing {
  private static final Map<Level, Figure> PROJECTION =
      Map.of(
          Level.UPPER, Figure.HELIX_MASTOID_UPPER,
          Level.MIDDLE, Figure.HELIX_MASTOID_MIDDLE,
          Level.LOWER, Figure.HELIX_MASTOID_LOWER,
          Level.LOBULE, Figure.LOBULE_MASTOID);

  private final EarMeasurer measurer;
  private final Measures before;
  private final EarParts parts;
  private final TotalEnergy energy;
  private final TimeSteps steps;
  private final boolean whole;
  private final List<ReleaseTest> releases = new ArrayList<>();
  private final TimeMonitor monitor;
  private final List<MomentResult> moments = new ArrayList<>();
  private final StepTally tally = new StepTally();

  private EarHealing(
      EarBody body,
      EarMeasurer measurer,
      List<Operation> plan,
      TimeStepSettings settings,
      boolean whole,
      TimeMonitor monitor) {
    this.whole = whole;
    this.measurer = measurer;
    this.monitor = monitor;
    before = measurer.measure(body.auricle().mesh().unknowns());
    parts = new EarParts(body, plan);
    energy = parts.energy();
    NearbyRest rest = new NearbyRest(energy, new NewtonMinimiser(energy));
    steps =
        new TimeSteps(energy, rest, body.shell().directors(), parts.parts(), 0, settings, monitor);
    if (whole && !parts.threads().isEmpty()) {
      releases.add(new ReleaseTest(energy, rest, parts.parts(), parts.threads(), settings));
    }
  }

  /**
   * The ear at the times asked for. The body is left as it was: tied, in its present state.
   *
   * @param body at rest after the plan
   * @param measurer of its auricle
   * @param plan the operations done
   * @param days times since tied, ascending; 0 is added if it is not there
   * @param settings of the steps in time
   * @param monitor may cancel
   */
  public static Timeline follow(
      EarBody body,
      EarMeasurer measurer,
      List<Operation> plan,
      List<Double> days,
      TimeStepSettings settings,
      TimeMonitor monitor) {
    return follow(new EarHealing(body, measurer, plan, settings, true, monitor), body, days);
  }

  /**
   * The same for the measurements alone: without asking at every time what would happen if all
   * threads were cut, nor in which shape the wall would be free of stress.
   */
  public static Timeline measuredAlone(
      EarBody body,
      EarMeasurer measurer,
      List<Operation> plan,
      List<Double> days,
      TimeStepSettings settings,
      TimeMonitor monitor) {
    return follow(new EarHealing(body, measurer, plan, settings, false, monitor), body, days);
  }

  private static Timeline follow(EarHealing healing, EarBody body, List<Double> days) {
    double[] saved = body.shell().energy().save();
    Map<ElasticThread, ThreadLaw> laws = new LinkedHashMap<>();
    for (BodyThread thread : body.threads()) {
      laws.put(thread.thread(), thread.thread().law());
    }
    try {
      return healing.run(days);
    } finally {
      laws.forEach((thread, law) -> thread.follow(law));
      body.shell().energy().restore(saved);
    }
  }

  private Timeline run(List<Double> days) {
    TimeResult result = steps.settle();
    tally.add(result);
    if (result.converged()) {
      moments.add(moment(0, result));
    }
    for (double day : days) {
      if (day > 0 && result.converged()) {
        result = steps.reach(day * Durations.DAY_S);
        tally.add(result);
        if (result.converged()) {
          moments.add(moment(day, result));
        }
      }
    }
    if (result.converged()) {
      // what is asked about the last moment may have been cut short
      result = steps.reach(steps.time());
    }
    return Timeline.of(moments, tally.result(result.outcome(), result.reason(), List.of()));
  }

  private MomentResult moment(double days, TimeResult result) {
    Measures measures = measurer.measure(energy.unknowns());
    Measures tied = moments.isEmpty() ? measures : moments.get(0).measures();
    return new MomentResult(
        days,
        days == 0 ? "tied" : Durations.words(days * Durations.DAY_S),
        measures,
        parts.threads().stream().map(SlippingThread::state).toList(),
        loss(measures, tied),
        released(days),
        new EarState(
            energy.unknowns(),
            energy.frames(),
            whole ? Optional.of(parts.wall().unstressed()) : Optional.empty()),
        Stream.concat(
                days == 0 ? parts.lost().stream().map(words -> "tied: " + words) : Stream.empty(),
                result.events().stream()
                    .map(event -> Durations.words(event.time_s()) + ": " + event.words()))
            .toList());
  }

  private Optional<Measures> released(double days) {
    return releases.stream()
        .findFirst()
        .flatMap(release -> release.at(days * Durations.DAY_S, monitor))
        .map(measurer::measure);
  }

  private Map<Level, Double> loss(Measures now, Measures tied) {
    Map<Level, Double> loss = new EnumMap<>(Level.class);
    PROJECTION.forEach(
        (level, figure) -> {
          double correction = figure.of(before) - figure.of(tied);
          if (correction >= Timeline.LEAST_CORRECTION_MM) {
            loss.put(level, (figure.of(now) - figure.of(tied)) / correction);
          }
        });
    return loss;
  }
}
