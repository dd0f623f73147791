package auricle.scenario;

import auricle.assessment.CautionKind;
import auricle.measurement.Figure;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What came out of the rehearsal of one ear, as expectations ask for it. */
interface Course {
  /** Whether every step found its equilibrium. */
  boolean converged();

  /** Whether times after the operation were rehearsed too. */
  boolean timed();

  /** The cautions raised; empty if the result was not assessed. */
  Optional<Set<CautionKind>> cautions();

  /** A measurement at a moment, in its unit; empty if the rehearsal has no such moment. */
  OptionalDouble figure(Figure figure, Moment moment);

  /** Tension of the thread of a step at a moment, N; empty if there is none. */
  OptionalDouble tension(String step, Moment moment);
}
