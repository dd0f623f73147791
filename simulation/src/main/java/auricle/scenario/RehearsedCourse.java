package auricle.scenario;

import auricle.assessment.CautionKind;
import auricle.measurement.Figure;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.StepResult;
import auricle.rehearsal.ThreadState;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What came out of a rehearsal, as expectations ask for it. */
final class RehearsedCourse implements Course {
  private final RehearsalResult result;

  RehearsedCourse(RehearsalResult result) {
    this.result = result;
  }

  @Override
  public boolean converged() {
    return result.converged();
  }

  @Override
  public boolean timed() {
    return false;
  }

  @Override
  public Optional<Set<CautionKind>> cautions() {
    return Optional.empty();
  }

  @Override
  public OptionalDouble figure(Figure figure, Moment moment) {
    return of(step(moment).map(s -> figure.of(s.measures())));
  }

  @Override
  public OptionalDouble tension(String step, Moment moment) {
    List<ThreadState> threads = step(moment).map(StepResult::threads).orElse(List.of());
    return of(
        threads.stream()
            .filter(t -> t.name().equals(step))
            .map(ThreadState::tension_n)
            .findFirst());
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
