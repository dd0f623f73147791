package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.Level;
import auricle.diagnostics.BadInputException;
import auricle.healing.MomentResult;
import auricle.healing.Timeline;
import auricle.plan.EarCase;
import auricle.plan.Operation;
import auricle.plan.Plan;
import auricle.plan.Scoring;
import auricle.plan.TiedOperation;
import auricle.scenario.ScenarioReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/**
 * What a year leaves of an open fold treated by sutures with posterior scoring, against outcomes in
 * patients: the rows are those of outcome_rows.csv, with their sources.
 */
@Tag("slow")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class YearAfterTest {
  private static final Path SCENARIOS = Path.of("..", "scenarios");

  private final EarCase open = read("open_fold.yaml");
  private final Timeline usual = year(open);

  private static EarCase read(String file) {
    try {
      return ScenarioReader.shipped().read(SCENARIOS.resolve(file)).scenario().ears().get(0).ear();
    } catch (BadInputException e) {
      throw new IllegalStateException(e);
    }
  }

  private static RehearsalResult rehearsed(EarCase ear) {
    try {
      return Rehearsal.run(ear, RehearsalSettings.usual(), RehearsalWatcher.SILENT);
    } catch (BadInputException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Timeline year(EarCase ear) {
    RehearsalResult result = rehearsed(ear);
    assertTrue(result.converged(), "the plan comes to rest");
    Timeline line = result.timeline().orElseThrow();
    assertTrue(line.converged(), line.words());
    return line;
  }

  private EarCase with(Function<Operation, List<Operation>> change) {
    Plan plan =
        new Plan(open.plan().operations().stream().map(change).flatMap(List::stream).toList());
    return new EarCase(open.ear(), open.tissue(), plan, open.target());
  }

  private static double loss(MomentResult moment, Level level) {
    return moment.loss().getOrDefault(level, Double.NaN);
  }

  private MomentResult at(double days) {
    return usual.moments().stream().filter(m -> m.days() == days).findFirst().orElseThrow();
  }

  @Test
  void aboutAFifthIsLostAndUpperLosesAtLeastAsMuchAsMiddleAndLower() {
    OutcomeRow fit = rows(usual).get(0);
    // about a fifth: within a quarter of the stated value, which common practice does not state
    // closer
    assertTrue(Math.abs(fit.found() - fit.low()) < 0.25 * fit.low(), fit.toString());
    assertTrue(loss(usual.last(), Level.UPPER) >= loss(usual.last(), Level.MIDDLE));
    double lower = usual.last().loss().getOrDefault(Level.LOWER, 0.0);
    assertTrue(loss(usual.last(), Level.MIDDLE) >= lower);
  }

  private static List<OutcomeRow> rows(Timeline line) {
    return OutcomeRows.load().with(Calibration.found(line, Optional.empty()));
  }

  @Test
  void outcomesThatTookNoPartInTheFitAreMet() {
    for (OutcomeRow row : rows(usual)) {
      assertTrue(row.inFit() || Double.isNaN(row.found()) || row.residual() == 0, row.toString());
    }
    assertTrue(loss(at(182), Level.UPPER) < 0.45);
  }

  @Test
  void withoutScoringMoreIsLost() {
    Timeline unscored =
        year(with(operation -> operation instanceof Scoring ? List.of() : List.of(operation)));
    assertTrue(Calibration.meanLoss(unscored) > Calibration.meanLoss(usual));
  }

  @Test
  void aThickEarLosesMore() {
    double thick = 1.4 * open.ear().cartilageThickness_mm();
    EarCase thicker =
        new EarCase(
            open.ear().withCartilageThickness_mm(thick), open.tissue(), open.plan(), open.target());
    assertTrue(Calibration.meanLoss(year(thicker)) > Calibration.meanLoss(usual));
  }

  @Test
  void aThreadThatIsAbsorbedBeforeScarIsStrongLosesMore() {
    Timeline absorbed =
        year(
            with(
                operation ->
                    operation instanceof TiedOperation tied
                        ? List.of((Operation) tied.withThread("polyglactin_4_0"))
                        : List.of(operation)));
    assertTrue(Calibration.meanLoss(absorbed) > Calibration.meanLoss(usual));
    assertTrue(absorbed.last().threads().stream().allMatch(thread -> thread.gone()));
    assertFalse(absorbed.moments().stream().allMatch(m -> m.events().isEmpty()));
  }

  @Test
  void aBolsterAloneDoesNotHoldTheFold() {
    RehearsalResult result = rehearsed(read("bolster_alone.yaml"));
    Timeline line = result.timeline().orElseThrow();
    double before = result.before().measures().foldAngleUpper_deg();
    double held = before - line.moments().get(0).measures().foldAngleUpper_deg();
    double left = before - line.last().measures().foldAngleUpper_deg();
    assertTrue(held > 0 && left < held / 2, "held " + held + " deg, left " + left);
  }
}
