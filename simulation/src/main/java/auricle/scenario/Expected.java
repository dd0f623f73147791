package auricle.scenario;

import auricle.assessment.CautionKind;
import java.util.List;

/**
 * What should come out of the rehearsal of an ear.
 *
 * @param converged whether every step should find its equilibrium
 * @param cautions that should be raised
 * @param noCautions that should not be raised
 * @param figures what should be measured
 */
public record Expected(
    boolean converged,
    List<CautionKind> cautions,
    List<CautionKind> noCautions,
    List<Expectation> figures) {
  /** Nothing but equilibrium. */
  public static final Expected NONE = new Expected(true, List.of(), List.of(), List.of());

  /**
   * @param cautions kept as a copy
   * @param noCautions kept as a copy
   * @param figures kept as a copy
   */
  public Expected {
    cautions = List.copyOf(cautions);
    noCautions = List.copyOf(noCautions);
    figures = List.copyOf(figures);
  }
}
