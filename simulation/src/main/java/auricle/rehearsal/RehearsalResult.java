package auricle.rehearsal;

import auricle.anatomy.Auricle;
import auricle.assessment.Assessment;
import auricle.assessment.Assessor;
import auricle.assessment.Caution;
import auricle.assessment.ThreadLoad;
import auricle.healing.Timeline;
import auricle.material.UsedRow;
import auricle.plan.EarCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a rehearsal found.
 *
 * @param ear the ear and the plan
 * @param auricle the ear at rest as it was meshed
 * @param steps states in order; the first is the ear before the plan
 * @param timeline the time after the operation; none if it was not asked for or the plan did not
 *     come to rest
 * @param healed the ear at the moments of the timeline, in their order, as far as it came; none of
 *     them need be there if it was cancelled
 * @param reactions what a little more of every dose would do at the end of the plan; none if they
 *     were not asked for or the plan did not come to rest
 * @param materialRows rows of the material tables that the figures rest on, threads included
 * @param provenance mesh, solver and versions
 */
public record RehearsalResult(
    EarCase ear,
    Auricle auricle,
    List<StepResult> steps,
    Optional<Timeline> timeline,
    List<DeformedEar> healed,
    List<Reaction> reactions,
    List<UsedRow> materialRows,
    Provenance provenance) {
  /** Keeps its own copies of the lists. */
  public RehearsalResult {
    steps = List.copyOf(steps);
    healed = List.copyOf(healed);
    reactions = List.copyOf(reactions);
    materialRows = List.copyOf(materialRows);
  }

  /** The operation alone. */
  RehearsalResult(
      EarCase ear,
      Auricle auricle,
      List<StepResult> steps,
      List<UsedRow> materialRows,
      Provenance provenance) {
    this(ear, auricle, steps, Optional.empty(), List.of(), List.of(), materialRows, provenance);
  }

  /** The same with the time after the operation. */
  RehearsalResult with(Timeline followed, List<DeformedEar> shapes) {
    return new RehearsalResult(
        ear, auricle, steps, Optional.of(followed), shapes, reactions, materialRows, provenance);
  }

  /** The same with what a little more of every dose would do. */
  RehearsalResult with(List<Reaction> found) {
    return new RehearsalResult(
        ear, auricle, steps, timeline, healed, found, materialRows, provenance);
  }

  /** Whether every step came to rest. */
  public boolean converged() {
    return steps.stream().allMatch(s -> s.outcome().converged());
  }

  /** Whether the rehearsal was ended on request. */
  public boolean cancelled() {
    return steps.stream().anyMatch(s -> s.outcome().cancelled());
  }

  /** What there is to say about it: faults before, balance against the target, cautions. */
  public Assessment assessment() {
    return assessment(ear, after());
  }

  /**
   * The same of another end of the plan, whose doses are turned.
   *
   * @param turned the ear with those doses
   * @param end where it came to rest
   */
  public Assessment assessment(EarCase turned, StepResult end) {
    List<ThreadLoad> loads =
        end.threads().stream()
            .filter(ThreadState::suture)
            .map(t -> new ThreadLoad(t.name(), t.tension_n(), t.knotPull_n(), t.tearThrough_n()))
            .toList();
    Assessment found = Assessor.assess(turned, before().measures(), end.measures(), loads);
    List<Caution> cautions = new ArrayList<>(found.cautions());
    StrainCaution.of(end.extremes().strain(), materialRows).ifPresent(cautions::add);
    FoldCaution.of(end.shape(), auricle).ifPresent(cautions::add);
    PressCaution.of(turned, materialRows).ifPresent(cautions::add);
    return new Assessment(found.faults(), found.balance(), cautions);
  }

  /** The ear before the plan. */
  public StepResult before() {
    return steps.get(0);
  }

  /** The ear after the last step that was done. */
  public StepResult after() {
    return steps.get(steps.size() - 1);
  }
}
