package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.Auricle;
import auricle.anatomy.MeshLevel;
import auricle.fitting.EarFitter;
import auricle.healing.Bands;
import auricle.healing.EarHealing;
import auricle.healing.MomentResult;
import auricle.healing.ThreadAtMoment;
import auricle.healing.TimeStepSettings;
import auricle.healing.Timeline;
import auricle.material.MaterialTables;
import auricle.measurement.EarMeasurer;
import auricle.measurement.Measures;
import auricle.measurement.NamedValue;
import auricle.numerics.Workers;
import auricle.plan.EarCase;
import auricle.plan.Operation;
import auricle.plan.Plan;
import auricle.plan.Tie;
import auricle.plan.TiedOperation;
import auricle.testing.ShippedEar;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Samples of tissue on a real ear, over the first day. */
@Tag("slow")
class SpringBackTest {
  private static final int SAMPLES = 3;
  private static final RehearsalSettings SETTINGS =
      new RehearsalSettings(MeshLevel.PLANNING, true, List.of(0.0, 1.0), SAMPLES, 7);

  /** A rehearsal that has been led through its plan. */
  private record Ready(RehearsalRun run, Auricle auricle, EarCase ear) {
    SpringBack after(RehearsalWatcher watcher) {
      return new SpringBack(run.body(), run.operations(), SETTINGS, watcher);
    }
  }

  private static Ready ready(UnaryOperator<Operation> change) throws Exception {
    return ready(ShippedEar.of("open_fold"), change);
  }

  private static Ready ready(EarCase open, UnaryOperator<Operation> change) throws Exception {
    Plan plan = new Plan(open.plan().operations().stream().map(change).toList());
    EarCase ear = new EarCase(open.ear(), open.tissue(), plan, open.target());
    Auricle auricle = EarFitter.fit(ear.ear(), MeshLevel.PLANNING, "/ear").auricle();
    RehearsalRun run =
        new RehearsalRun(
            ear,
            auricle,
            EarTissue.of(ear, auricle, MaterialTables.shipped()),
            RehearsalWatcher.SILENT);
    assertTrue(run.run().converged());
    return new Ready(run, auricle, ear);
  }

  @Test
  void bandsOfAnEarAreTheSameToTheLastBitForAnyNumberOfThreads() throws Exception {
    Ready ready = ready(operation -> operation);
    Bands one = bands(ready, 1);
    assertEquals(List.of(), one.failures());
    assertTrue(
        one.figures().stream().anyMatch(band -> band.high() - band.low() > 0.01), "they spread");
    assertEquals(one, bands(ready, 2));
    assertEquals(one, bands(ready, 3));
  }

  private static Bands bands(Ready ready, int threads) throws Exception {
    return Workers.of(threads)
        .within(() -> ready.after(RehearsalWatcher.SILENT).follow())
        .bands()
        .orElseThrow();
  }

  @Test
  void aSampleIsWhatARehearsalOfItsTissueGives() throws Exception {
    Ready ready = ready(operation -> operation);
    SpringBack after = ready.after(RehearsalWatcher.SILENT);
    RehearsalRun own =
        new RehearsalRun(ready.ear(), ready.auricle(), after.drawn(1), RehearsalWatcher.SILENT);
    assertTrue(own.run().converged());
    Timeline alone =
        EarHealing.measuredAlone(
            own.body(),
            new EarMeasurer(ready.auricle()),
            own.operations(),
            SETTINGS.times_days(),
            TimeStepSettings.USUAL,
            time_s -> true);
    Timeline sample = after.sample(1);
    assertEquals(alone.moments().size(), sample.moments().size());
    for (int m = 0; m < alone.moments().size(); m++) {
      double expected = alone.moments().get(m).measures().helixMastoidUpper_mm();
      // residuals are brought below 1e-6 of the largest force: far below a thousandth of a mm
      double found = sample.moments().get(m).measures().helixMastoidUpper_mm();
      assertEquals(expected, found, 1e-4, "upper level at moment " + m);
    }
    assertNotEquals(after.sample(0).last().measures(), sample.last().measures());
  }

  /**
   * What is dosed as a tension is tied at that tension on every tissue, whatever length it takes.
   */
  @Test
  void threadsAtATensionAreTiedAtItInEverySample() throws Exception {
    double pull = 0.15;
    Ready ready =
        ready(
            operation ->
                operation instanceof TiedOperation tied && operation.name().equals("lower suture")
                    ? (Operation) tied.withTie(new Tie.Tension(pull))
                    : operation);
    SpringBack after = ready.after(RehearsalWatcher.SILENT);
    List<Double> folds = new ArrayList<>();
    for (int number = 0; number < SAMPLES; number++) {
      MomentResult tied = after.sample(number).moments().get(0);
      ThreadAtMoment lower =
          tied.threads().stream()
              .filter(thread -> thread.name().equals("lower suture"))
              .findFirst()
              .orElseThrow();
      // tied to a thousandth of it
      assertEquals(pull, lower.tension_n(), 2e-4, "sample " + number);
      folds.add(tied.measures().foldAngleUpper_deg());
    }
    assertTrue(Math.abs(folds.get(0) - folds.get(1)) > 0.01, "tissues differ: " + folds);
  }

  /**
   * A sharp fold whose cuts are shut: moved by 0.6 deg when they counted as uncut for what varies
   * within a triangle too.
   */
  @Test
  void theYearBeginsWhereThePlanEnded() throws Exception {
    Ready ready = ready(ShippedEar.of("upper_too_far"), operation -> operation);
    Measures after = new EarMeasurer(ready.auricle()).measure(ready.run().body().unknowns());
    Measures tied = ready.after(RehearsalWatcher.SILENT).follow().moments().get(0).measures();
    for (int i = 0; i < after.figures().size(); i++) {
      NamedValue expected = after.figures().get(i);
      assertEquals(expected.value(), tied.figures().get(i).value(), 1e-3, expected.key());
    }
  }

  /** Wherever that is, in its last release test too: it asks little more, and is no whole year. */
  @ParameterizedTest
  @ValueSource(ints = {1, 10, 40, 45, 50, 55})
  void aYearThatIsEndedGoesNoFurther(int looks) throws Exception {
    Ready ready = ready(operation -> operation);
    int[] looked = new int[1];
    RehearsalWatcher ending =
        new RehearsalWatcher() {
          @Override
          public void progress(String words, double share) {}

          @Override
          public boolean cancelled() {
            return ++looked[0] > looks;
          }
        };
    Timeline line = ready.after(ending).follow();
    assertTrue(line.cancelled(), line.words());
    assertTrue(looked[0] <= looks + 3, looked[0] + " looks, ended after " + looks);
  }

  @Test
  void cancellingEndsTheSamplesWithoutBands() throws Exception {
    Ready ready = ready(operation -> operation);
    boolean[] asked = new boolean[1];
    RehearsalWatcher ending =
        new RehearsalWatcher() {
          @Override
          public void progress(String words, double share) {
            asked[0] |= words.startsWith("tissue sample 1");
          }

          @Override
          public boolean cancelled() {
            return asked[0];
          }
        };
    Timeline line = Workers.of(1).within(() -> ready.after(ending).follow());
    assertTrue(line.converged(), "the ear itself had been followed to the end");
    assertTrue(line.bands().isEmpty());
  }
}
