package auricle.report;

import auricle.anatomy.Auricle;
import auricle.anatomy.EarMeasurements;
import auricle.anatomy.MeshLevel;
import auricle.anatomy.ShapeParameters;
import auricle.anatomy.Side;
import auricle.material.Tissue;
import auricle.measurement.Figure;
import auricle.plan.EarCase;
import auricle.plan.Plan;
import auricle.plan.SkinStrip;
import auricle.plan.Target;
import auricle.plan.TissueChoice;
import auricle.rehearsal.Extreme;
import auricle.rehearsal.Extremes;
import auricle.rehearsal.Position;
import auricle.rehearsal.Provenance;
import auricle.rehearsal.Reaction;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.StepOutcome;
import auricle.rehearsal.StepResult;
import auricle.rehearsal.ThreadState;
import auricle.report.picture.Moment;
import auricle.report.picture.PaperEar;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A rehearsal of an ear of paper, made up. */
final class PaperRehearsal {
  private PaperRehearsal() {}

  /**
   * A report of one ear or two.
   *
   * @param converged whether the last step is in equilibrium
   */
  static RehearsalReport report(boolean converged, int ears) {
    List<RehearsalResult> results =
        ears == 1
            ? List.of(result(Side.RIGHT, converged))
            : List.of(result(Side.RIGHT, converged), result(Side.LEFT, converged));
    return new RehearsalReport(
        "An ear of paper, with a comma",
        "paper.yaml",
        "0".repeat(64),
        "0",
        results,
        List.of(),
        List.of());
  }

  private static RehearsalResult result(Side side, boolean converged) {
    EarMeasurements ear = EarMeasurements.normalAdult().withSide(side);
    EarCase earCase =
        new EarCase(
            ear, TissueChoice.standard(), Plan.of(SkinStrip.usual("strip")), Target.usual());
    List<StepResult> steps =
        List.of(
            step("before", 140, true), step("strip", 125, true), step("suture", 105, converged));
    return new RehearsalResult(
        earCase,
        Auricle.of(ShapeParameters.normalAdult(), MeshLevel.PLANNING),
        steps,
        Optional.empty(),
        List.of(),
        List.of(new Reaction("suture", "gap_mm", "mm", Map.of(Figure.FOLD_ANGLE_UPPER, 4.5), "")),
        Tissue.standard().rows(),
        new Provenance("0", "17", "planning", 1525, 2880, 7625, 1e-9, 12, List.of("made up")));
  }

  private static StepResult step(String label, double fold_deg, boolean converged) {
    Moment moment = PaperEar.moment(fold_deg);
    String words = converged ? "at rest" : "stalled: the forces could not be balanced";
    StepOutcome outcome = new StepOutcome(converged, false, words, 4, 1e-9, 1e-8, List.of());
    Position origin = new Position(0, 0, 0);
    Extreme extreme = new Extreme(0.1, 7, "antihelix", 70, origin, "antihelix");
    ThreadState thread =
        new ThreadState("suture", true, 0.53, 5.88, 13.5, false, 17, true, List.of(origin));
    return new StepResult(
        label,
        label.equals("before") ? Optional.empty() : Optional.of(SkinStrip.usual(label)),
        outcome,
        moment.measures(),
        label.equals("before") ? List.of() : List.of(thread),
        new Extremes(extreme, extreme),
        moment.shape());
  }
}
