package auricle.report;

import auricle.assessment.Assessment;
import auricle.assessment.SideDifference;
import auricle.healing.Timeline;
import auricle.rehearsal.RehearsalResult;
import auricle.scenario.ExpectationResult;
import java.util.List;

/**
 * A rehearsal of one ear or of a pair, with what it was made from.
 *
 * @param title of the scenario
 * @param scenarioFile name of the scenario file
 * @param scenarioSha256 hash of its bytes
 * @param version of this program
 * @param ears one result an ear
 * @param sides the two ears of a pair against each other
 * @param expectations what the scenario expects, and what was found
 */
public record RehearsalReport(
    String title,
    String scenarioFile,
    String scenarioSha256,
    String version,
    List<RehearsalResult> ears,
    List<SideDifference> sides,
    List<ExpectationResult> expectations) {

  /** Keeps its own copies of the lists. */
  public RehearsalReport {
    ears = List.copyOf(ears);
    sides = List.copyOf(sides);
    expectations = List.copyOf(expectations);
  }

  /** Whether every step of every ear ended in equilibrium, and every time after it. */
  public boolean converged() {
    return ears.stream()
        .allMatch(ear -> ear.converged() && ear.timeline().stream().allMatch(Timeline::converged));
  }

  /** Whether everything that the scenario expects was found. */
  public boolean expectationsMet() {
    return expectations.stream().allMatch(ExpectationResult::met);
  }

  /** What there is to say about an ear, the other one in view. */
  public Assessment assessment(RehearsalResult ear) {
    return ear.assessment().with(sides);
  }

  /** Whether it is of two ears. */
  public boolean ofPair() {
    return ears.size() > 1;
  }
}
