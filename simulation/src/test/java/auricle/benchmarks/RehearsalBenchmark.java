package auricle.benchmarks;

import auricle.diagnostics.BadInputException;
import auricle.material.MaterialTables;
import auricle.plan.BowlStrip;
import auricle.plan.EarCase;
import auricle.plan.FoldSuture;
import auricle.plan.LobuleSuture;
import auricle.plan.Plan;
import auricle.plan.Scoring;
import auricle.plan.Tie;
import auricle.rehearsal.LiveEar;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.RehearsalSettings;
import auricle.rehearsal.RehearsalWatcher;
import auricle.rehearsal.StepResult;
import auricle.testing.OpenFold;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A rehearsal on the planning mesh: scoring, four fold sutures, bowl strip and lobule suture on an
 * ear with an open fold (invented numbers), and the turn of one tie while the ear is worked on.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 6)
@Measurement(iterations = 5, time = 6)
@Fork(1)
public class RehearsalBenchmark {
  /** Gaps of the second suture through which the tie is turned, mm: it pulls at all of them. */
  private static final double[] GAPS = {9.5, 9.25, 9, 8.75, 8.5, 8.75, 9, 9.25};

  private LiveEar live;
  private int turns;

  /** Rehearses the plan once. */
  @Setup
  public void rehearse() throws BadInputException {
    live =
        LiveEar.of(
            ear(9.25), RehearsalSettings.tied(), MaterialTables.shipped(), RehearsalWatcher.SILENT);
  }

  private static EarCase ear(double gap_mm) {
    Plan plan =
        Plan.of(
            Scoring.usual("scoring"),
            FoldSuture.square("upper fold", 74, 7, -6, 8, new Tie.Gap(11), OpenFold.THREAD),
            FoldSuture.square("second fold", 66, 7, -6, 8, new Tie.Gap(gap_mm), OpenFold.THREAD),
            FoldSuture.square("third fold", 58, 7, -6, 8, new Tie.Gap(10), OpenFold.THREAD),
            FoldSuture.square("lower fold", 50, 7, -6, 8, new Tie.Gap(11), OpenFold.THREAD),
            BowlStrip.usual("bowl strip"),
            LobuleSuture.usual("lobule", new Tie.Gap(12), OpenFold.THREAD));
    return OpenFold.with(plan);
  }

  /** All steps from the first on the ear as it was meshed, with all measurements. */
  @Benchmark
  public RehearsalResult wholePlan() throws BadInputException {
    // another name for the first step, so that nothing is left of the plan before
    EarCase next = ear(9.25);
    String name = "scoring " + turns++;
    return live.rerun(
        next.withPlan(next.plan().replace(0, Scoring.usual(name))), RehearsalWatcher.SILENT);
  }

  /** A quarter of a millimetre at one tie, with all measurements. */
  @Benchmark
  public StepResult tieTurned() throws BadInputException {
    Optional<StepResult> turned =
        live.turn(ear(GAPS[turns++ % GAPS.length]), RehearsalWatcher.SILENT);
    return turned.orElseThrow(() -> new IllegalStateException("no rest"));
  }
}
