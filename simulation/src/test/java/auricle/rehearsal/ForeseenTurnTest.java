package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.BadInputException;
import auricle.material.MaterialTables;
import auricle.plan.EarCase;
import auricle.plan.FoldSuture;
import auricle.plan.Plan;
import auricle.plan.Scoring;
import auricle.plan.Tie;
import auricle.testing.OpenFold;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A little turn of a dose is told where it is foreseen to lead, and then led there. */
class ForeseenTurnTest {
  /** Iterations of a step of the control, led from where it is foreseen; 8 without that. */
  private static final int FEW = 4;

  private static Plan plan() {
    return Plan.of(
        Scoring.usual("scoring"),
        FoldSuture.square("upper", 74, 7, -6, 8, new Tie.Gap(7), OpenFold.THREAD),
        FoldSuture.square("lower", 52, 7, -6, 8, new Tie.Gap(8), OpenFold.THREAD));
  }

  private static LiveEar live() throws BadInputException {
    EarCase ear = OpenFold.with(plan());
    return LiveEar.of(
        ear, RehearsalSettings.tied(), MaterialTables.shipped(), RehearsalWatcher.SILENT);
  }

  private static EarCase turned(int step, String dose, double value) {
    return OpenFold.with(plan().withDose(step, dose, value));
  }

  @ParameterizedTest
  @CsvSource({"0, depth_fraction, 0.44", "1, gap_mm, 6.9"})
  void whereALittleTurnLeadsIsToldBeforeItIsReached(int step, String dose, double value)
      throws BadInputException {
    LiveEar live = live();
    float[] from = live.result().after().shape().points();
    List<Foreseen> told = new ArrayList<>();
    StepResult rest = live.turn(turned(step, dose, value), new Listening(told)).orElseThrow();
    assertEquals(1, told.size());
    float[] there = rest.shape().points();
    double off = farthest(told.get(0).shape().points(), there);
    double way = farthest(from, there);
    assertTrue(way > 0.02, "the turn does something: " + way);
    assertTrue(off < 0.4 * way, "off by " + off + " mm of " + way);
  }

  @Test
  void aStepOfTheDepthTakesFewIterations() throws BadInputException {
    StepResult rest =
        live().turn(turned(0, "depth_fraction", 0.41), RehearsalWatcher.SILENT).orElseThrow();
    assertTrue(rest.outcome().iterations() <= FEW, rest.outcome().toString());
  }

  /** Bites that move make other equations, and a far turn is not led to from where it stood. */
  @ParameterizedTest
  @CsvSource({"1, scapha_upper_from_fold_mm, 6.8", "0, depth_fraction, 0.6"})
  void whatIsNotForeseenIsFoundAllTheSame(int step, String dose, double value)
      throws BadInputException {
    LiveEar live = live();
    EarCase next = turned(step, dose, value);
    StepResult rest = live.turn(next, RehearsalWatcher.SILENT).orElseThrow();
    StepResult whole = live.rerun(next, RehearsalWatcher.SILENT).after();
    assertTrue(farthest(rest.shape().points(), whole.shape().points()) < 0.1);
  }

  @Test
  void aDepthTurnedToAndBackLeavesTheEarAsItWas() throws BadInputException {
    LiveEar live = live();
    float[] from = live.result().after().shape().points();
    EarCase deeper = turned(0, "depth_fraction", 0.42);
    assertTrue(live.turn(deeper, RehearsalWatcher.SILENT).isPresent());
    StepResult back = live.turn(OpenFold.with(plan()), RehearsalWatcher.SILENT).orElseThrow();
    assertTrue(farthest(from, back.shape().points()) < 2e-3);
  }

  private static double farthest(float[] one, float[] other) {
    double farthest = 0;
    for (int i = 0; i < one.length; i++) {
      farthest = Math.max(farthest, Math.abs(one[i] - other[i]));
    }
    return farthest;
  }

  /** Keeps what is foreseen. */
  private record Listening(List<Foreseen> told) implements RehearsalWatcher {
    @Override
    public void progress(String words, double share) {}

    @Override
    public boolean cancelled() {
      return false;
    }

    @Override
    public void foreseen(Foreseen end) {
      told.add(end);
    }
  }
}
