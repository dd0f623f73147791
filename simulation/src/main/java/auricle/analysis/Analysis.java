package auricle.analysis;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import auricle.numerics.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Runs a model. */
public final class Analysis {
  private final Model model;
  private final AnalysisWatcher watcher;
  private final Checks checks;

  private Analysis(Model model, AnalysisWatcher watcher) {
    this.model = model;
    this.watcher = watcher;
    this.checks = new Checks(model.probes());
  }

  /**
   * Solves a model and evaluates its probes. A solution that is not found is a result, not an
   * exception: {@link AnalysisResult#converged} says so.
   *
   * @param model what to solve
   * @param watcher told of everything, may end it
   * @throws BadInputException if the model cannot be solved as it is, with all findings; places are
   *     pointers into the model file
   */
  public static AnalysisResult run(Model model, AnalysisWatcher watcher) throws BadInputException {
    return new Analysis(model, watcher).run();
  }

  private AnalysisResult run() throws BadInputException {
    Findings findings = new Findings();
    checks.validate(model.expectations(), findings);
    ShellProblem problem = problem(findings);
    problem.findings().forEach(watcher::warned);
    watcher.prepared(problem.size());
    return model.solve() instanceof SolvePlan.Followed plan
        ? nonlinear(problem, plan)
        : linear(problem);
  }

  private ShellProblem problem(Findings findings) throws BadInputException {
    try {
      ShellProblem problem = new ShellProblem(model);
      findings.stopIfErrors();
      return problem;
    } catch (BadInputException e) {
      if (findings.hasErrors()) {
        findings.addAll(e.findings());
        throw new BadInputException(findings.list());
      }
      throw e;
    }
  }

  private AnalysisResult linear(ShellProblem problem) {
    Optional<LinearView> view = new LinearRun(problem).solve();
    String reason =
        view.isPresent()
            ? "one linear solution"
            : "the stiffness is singular: a part of the shell can move without resistance; hold it"
                + " by a support";
    StepResult step =
        new StepResult(
            1,
            1,
            view.isPresent(),
            view.isPresent() ? "converged" : "stalled",
            reason,
            view.map(v -> problem.probes().evaluate(v))
                .orElseGet(() -> problem.probes().evaluateNothing()),
            List.of());
    watcher.stepped(step, () -> new Snapshots(problem).of(view.orElseThrow()));
    return result(problem, view.isPresent(), reason, List.of(), List.of(step));
  }

  private AnalysisResult nonlinear(ShellProblem problem, SolvePlan.Followed plan)
      throws BadInputException {
    StepRun run = new StepRun(problem, watcher);
    StepRun.Ending ending = plan.follow(run);
    List<String> remarks = new ArrayList<>(ending.remarks());
    remarks.addAll(run.doubts());
    return result(
        problem, ending.outcome() == Outcome.CONVERGED, ending.reason(), remarks, run.steps());
  }

  private AnalysisResult result(
      ShellProblem problem,
      boolean converged,
      String outcome,
      List<String> remarks,
      List<StepResult> steps) {
    List<String> all = new ArrayList<>(problem.findings().stream().map(Finding::line).toList());
    all.addAll(remarks);
    return new AnalysisResult(
        converged,
        outcome,
        List.copyOf(all),
        problem.size(),
        List.copyOf(steps),
        checks.results(model.expectations(), steps));
  }
}
