package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import auricle.testing.ShippedEar;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
  private final EarCase open = read("open_fold");
  private final RehearsalResult result = rehearsed(open);
  private final Timeline usual = result.timeline().orElseThrow();

  private static EarCase read(String file) {
    try {
      return ShippedEar.of(file);
    } catch (BadInputException e) {
      throw new IllegalStateException(e);
    }
  }

  private static RehearsalResult rehearsed(EarCase ear) {
    try {
      Rising progress = new Rising();
      RehearsalResult result = Rehearsal.run(ear, RehearsalSettings.usual(), progress);
      assertEquals(1, progress.last, "told when all is done");
      assertTrue(progress.healing < 0.9, "the year begins at " + progress.healing);
      return result;
    } catch (BadInputException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Hears what share of the whole is done: it never falls. */
  private static final class Rising implements RehearsalWatcher {
    private double last;
    private double healing = 1;

    @Override
    public void progress(String words, double share) {
      assertTrue(share >= last, words + ": " + share + " after " + last);
      healing = words.startsWith("healing") ? Math.min(healing, share) : healing;
      last = share;
    }

    @Override
    public boolean cancelled() {
      return false;
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

  /** The sutured fold keeps its shape, so its strain stays, and becomes the cartilage's own. */
  @Test
  void aFoldThatIsKeptKeepsItsStrainAndLosesItsStress() {
    int month = usual.moments().size() - 4;
    double strain = most(month, DeformedEar.Field.STRAIN);
    for (int m = month + 1; m < usual.moments().size(); m++) {
      assertEquals(strain, most(m, DeformedEar.Field.STRAIN), 0.02 * strain);
      double before = most(m - 1, DeformedEar.Field.STRESS);
      assertTrue(most(m, DeformedEar.Field.STRESS) < 0.8 * before, "moment " + m);
    }
  }

  private double most(int moment, DeformedEar.Field field) {
    float[] values = result.healed().get(moment).field(field);
    double most = 0;
    for (float value : values) {
      most = Math.max(most, value);
    }
    return most;
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
  void releaseTestShowsWhatHealingHolds() {
    double tied = usual.moments().get(0).released().orElseThrow().foldAngleUpper_deg();
    double year = usual.last().released().orElseThrow().foldAngleUpper_deg();
    double before = result.before().measures().foldAngleUpper_deg();
    // before anything heals threads alone hold the fold: scar and growth hold most of it later
    assertTrue(before - tied < 5, "cut at once: " + tied + " of " + before);
    assertTrue(year < usual.last().measures().foldAngleUpper_deg() + 10, "cut late: " + year);
  }

  @Test
  void withoutScoringMoreIsLostAndAllIsAsTheTheorySays() throws IOException {
    Timeline unscored =
        year(with(operation -> operation instanceof Scoring ? List.of() : List.of(operation)));
    assertTrue(Calibration.meanLoss(unscored) > Calibration.meanLoss(usual));
    Map<String, Double> found = Calibration.found(usual, Optional.of(unscored));
    List<String> lines = Files.readAllLines(Path.of("THEORY.md"));
    for (Map.Entry<String, String> row : ROWS_OF_THEORY.entrySet()) {
      String line =
          lines.stream().filter(l -> l.startsWith(row.getKey())).findFirst().orElseThrow();
      double printed = Double.parseDouble(line.split("\\|")[2].strip().replace('\u2212', '-'));
      double digits = row.getValue().contains("loss") ? 1e-3 : 1e-2;
      double ours = Objects.requireNonNull(found.get(row.getValue()), row.getValue());
      assertEquals(ours, printed, digits, line);
    }
  }

  /** Rows of the table of outcomes in THEORY.md, and what they are called here. */
  private static final Map<String, String> ROWS_OF_THEORY =
      Map.of(
          "| fit: mean loss", "mean_loss",
          "| loss at the upper level |", "loss_upper",
          "| loss at the middle level |", "loss_middle",
          "| share of the loss at the upper level there by 3 months |", "by_3_months",
          "| share that comes from 3 to 6 months |", "from_3_to_6_months",
          "| loss without scoring over that with it |", "without_scoring");

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

  /** Oliaei 2013, rabbit: 14.5 deg (4-25) left of a bend held for four weeks; order only. */
  @Test
  void aBolsterAloneLeavesASmallLastingBend() {
    RehearsalResult pad = rehearsed(read("bolster_alone"));
    List<MomentResult> moments = pad.timeline().orElseThrow().moments();
    double held = bend(pad, moments.get(0));
    double left = bend(pad, moments.get(moments.size() - 1));
    double earlier = bend(pad, moments.get(moments.size() - 2));
    assertTrue(left > 1 && left < held / 2, "held " + held + " deg, left " + left);
    assertTrue(left > 0.9 * earlier, "lasts: " + earlier + " deg earlier, left " + left);
  }

  /** Mandal 2006: scoring without sutures recurs most; rabbit ear: abrasion alone not kept. */
  @Test
  void scoringAloneDoesNotHoldTheFold() {
    RehearsalResult scored =
        rehearsed(with(o -> o instanceof Scoring ? List.of(o) : List.<Operation>of()));
    double made = bend(scored, scored.timeline().orElseThrow().last());
    double sutured = bend(result, usual.last());
    assertTrue(sutured > 10 && made < sutured / 4, "scored " + made + " deg, sutured " + sutured);
  }

  /** Fold angle at the upper level, deg, by which the ear is more folded than before. */
  private static double bend(RehearsalResult ear, MomentResult moment) {
    return ear.before().measures().foldAngleUpper_deg() - moment.measures().foldAngleUpper_deg();
  }
}
