package auricle.viewer.task;

import auricle.anatomy.Level;
import auricle.assessment.Assessment;
import auricle.diagnostics.Finding;
import auricle.plan.EarCase;
import auricle.rehearsal.Foreseen;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.StepOutcome;
import auricle.rehearsal.StepResult;
import auricle.viewer.task.Rehearsed.Reach;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Results of the simulation as what is shown. */
final class Results {
  private static final StepOutcome NOT_YET =
      new StepOutcome(false, false, "foreseen, not at rest yet", 0, 0, 0, List.of());

  private Results() {}

  /** The ear before a plan that has not been worked out yet. */
  static Rehearsed before(EarCase ear, RehearsalResult untouched) {
    Rehearsed r = steps(untouched, Optional.empty());
    return new Rehearsed(
        ear,
        Reach.BEFORE,
        r.map(),
        r.steps(),
        List.of(),
        List.of(),
        List.of(),
        said(ear),
        r.basis());
  }

  /** The end of a plan whose doses were turned; the steps between are those before the turn. */
  static Rehearsed turned(EarCase ear, RehearsalResult from, Rehearsed last, StepResult end) {
    Surfaces surfaces = new Surfaces(from.auricle(), from.before().shape());
    Moment tied = moment(last.tied().label(), end, surfaces);
    return ended(ear, last, tied, Reach.END, cautions(ear, from.assessment(ear, end)));
  }

  /** The same before it is at rest: the figures are those before the turn, and nothing is said. */
  static Rehearsed foreseen(EarCase ear, RehearsalResult from, Rehearsed last, Foreseen end) {
    Moment before = last.tied();
    Surfaces surfaces = new Surfaces(from.auricle(), from.before().shape());
    Moment ahead =
        new Moment(
            before.label(),
            0,
            false,
            surfaces.of(end.shape()),
            Surfaces.lines(end.shape()),
            before.measures(),
            end.threads(),
            NOT_YET,
            Optional.empty());
    return ended(ear, last, ahead, Reach.FORESEEN, List.of());
  }

  private static Rehearsed ended(
      EarCase ear, Rehearsed last, Moment end, Reach reach, List<Caution> cautions) {
    List<Moment> steps = new ArrayList<>(last.steps());
    steps.set(steps.size() - 1, end);
    return new Rehearsed(
        ear, reach, last.map(), steps, List.of(), List.of(), List.of(), cautions, last.basis());
  }

  /** The first steps of a plan, of the same ear as an earlier result. */
  static Rehearsed part(EarCase ear, RehearsalResult from, Rehearsed known, List<StepResult> done) {
    Surfaces surfaces = new Surfaces(from.auricle(), from.before().shape());
    return new Rehearsed(
        ear,
        Reach.PART,
        known.map(),
        done.stream().map(s -> moment(s.label(), s, surfaces)).toList(),
        List.of(),
        List.of(),
        List.of(),
        said(ear),
        known.basis());
  }

  /**
   * Every step of a plan.
   *
   * @param known places on this ear that an earlier result has
   */
  static Rehearsed steps(RehearsalResult result, Optional<EarMap> known) {
    Surfaces surfaces = new Surfaces(result.auricle(), result.before().shape());
    List<Moment> steps = new ArrayList<>();
    for (StepResult step : result.steps()) {
      steps.add(moment(step.label(), step, surfaces));
    }
    EarMap map = known.orElseGet(() -> new ChartMap(result.auricle(), steps.get(0).surface()));
    return new Rehearsed(
        result.ear(),
        Reach.STEPS,
        map,
        steps,
        List.of(),
        List.of(),
        List.of(),
        cautions(result.ear(), result.assessment()),
        basis(result));
  }

  private static Moment moment(String label, StepResult step, Surfaces surfaces) {
    return new Moment(
        label,
        0,
        false,
        surfaces.of(step.shape()),
        Surfaces.lines(step.shape()),
        step.measures(),
        step.threads(),
        step.outcome(),
        Optional.empty());
  }

  /** What the measured ear gives reason to say, and the plan by itself. */
  private static List<Caution> cautions(EarCase ear, Assessment assessment) {
    List<Caution> cautions = new ArrayList<>();
    assessment.cautions().forEach(c -> cautions.add(caution(c)));
    cautions.addAll(said(ear));
    return cautions;
  }

  private static List<Caution> said(EarCase ear) {
    return ear.findings("").stream()
        .map(f -> new Caution(sentence(f), f.remedy(), "", List.of()))
        .toList();
  }

  private static Caution caution(auricle.assessment.Caution c) {
    List<Double> levels =
        Arrays.stream(Level.values())
            .filter(l -> l.key().equals(c.where()))
            .map(Level::heightPercent)
            .toList();
    String basis = c.limit().source() + " (" + c.limit().confidence() + ")";
    return new Caution(c.words(), basis, levels.isEmpty() ? c.where() : "", levels);
  }

  private static String sentence(Finding f) {
    String found = f.found().isEmpty() ? "" : f.found();
    String expected = f.expected().isEmpty() ? "" : "; expected " + f.expected();
    String words = found + expected + ".";
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static List<String> basis(RehearsalResult result) {
    var p = result.provenance();
    return List.of(
        String.format(
            Locale.ROOT,
            "Mesh %s: %d vertices, %d triangles, %d unknowns; largest residual %.1e N; version %s.",
            p.mesh(),
            p.vertices(),
            p.triangles(),
            p.unknowns(),
            p.worstResidual_n(),
            p.version()));
  }
}
