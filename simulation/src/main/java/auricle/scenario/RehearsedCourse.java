package auricle.scenario;

import auricle.assessment.Caution;
import auricle.assessment.CautionKind;
import auricle.assessment.SideDifference;
import auricle.healing.MomentResult;
import auricle.healing.ThreadAtMoment;
import auricle.healing.Timeline;
import auricle.measurement.Figure;
import auricle.measurement.Measures;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.StepResult;
import auricle.rehearsal.ThreadState;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** What came out of a rehearsal, as expectations ask for it. */
final class RehearsedCourse implements Course {
  /** Months differ in length by less than this share; our own choice. */
  private static final double NEAR = 0.03;

  private final RehearsalResult result;
  private final List<SideDifference> sides;

  /**
   * @param sides the ear against the other one; empty if there is none
   */
  RehearsedCourse(RehearsalResult result, List<SideDifference> sides) {
    this.result = result;
    this.sides = List.copyOf(sides);
  }

  @Override
  public boolean converged() {
    return result.converged();
  }

  @Override
  public boolean timed() {
    return result.timeline().isPresent();
  }

  @Override
  public Optional<Set<CautionKind>> cautions() {
    return Optional.of(
        result.assessment().with(sides).cautions().stream()
            .map(Caution::kind)
            .collect(Collectors.toSet()));
  }

  @Override
  public OptionalDouble figure(Figure figure, Moment moment) {
    Optional<Measures> measures =
        moment.isTime()
            ? time(moment).map(MomentResult::measures)
            : step(moment).map(StepResult::measures);
    return of(measures.map(figure::of));
  }

  @Override
  public OptionalDouble tension(String step, Moment moment) {
    return of(moment.isTime() ? later(step, moment) : tied(step, moment));
  }

  private Optional<Double> tied(String step, Moment moment) {
    return step(moment).map(StepResult::threads).orElse(List.of()).stream()
        .filter(t -> t.name().equals(step))
        .map(ThreadState::tension_n)
        .findFirst();
  }

  private Optional<Double> later(String step, Moment moment) {
    return time(moment).map(MomentResult::threads).orElse(List.of()).stream()
        .filter(t -> t.name().equals(step))
        .map(ThreadAtMoment::tension_n)
        .findFirst();
  }

  /** The moment that was rehearsed nearest to a time, if it is near enough to be the one meant. */
  private Optional<MomentResult> time(Moment moment) {
    return result.timeline().map(Timeline::moments).orElse(List.of()).stream()
        .filter(m -> Math.abs(m.days() - moment.days()) <= NEAR * moment.days())
        .min(Comparator.comparingDouble(m -> Math.abs(m.days() - moment.days())));
  }

  private static OptionalDouble of(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  /** A step that found no equilibrium has no figures. */
  private Optional<StepResult> step(Moment moment) {
    return named(moment).filter(s -> s.outcome().converged());
  }

  private Optional<StepResult> named(Moment moment) {
    if (moment.equals(Moment.BEFORE)) {
      return Optional.of(result.before());
    }
    if (moment.equals(Moment.AFTER)) {
      return Optional.of(result.after());
    }
    return result.steps().stream()
        .filter(s -> s.operation().isPresent() && s.label().equals(moment.words()))
        .findFirst();
  }
}
