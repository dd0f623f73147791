package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.Auricle;
import auricle.anatomy.Level;
import auricle.anatomy.MeshLevel;
import auricle.diagnostics.BadInputException;
import auricle.fitting.EarFitter;
import auricle.healing.EarHealing;
import auricle.healing.MomentResult;
import auricle.healing.TimeStepSettings;
import auricle.healing.Timeline;
import auricle.material.MaterialTables;
import auricle.material.Tissue;
import auricle.plan.EarCase;
import auricle.plan.TissueChoice;
import auricle.testing.ShippedEar;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * How the year depends on the steps in time and on the time of remodelling: the two tables of
 * THEORY.md, section spring-back. Where a row has moved, the message is the row as it is now.
 */
class YearStudiesTest {
  /** Columns that hold figures are met to two units of their last digit. */
  private static final double UNITS = 2;

  /** The tied open fold, to be followed with steps of several kinds. */
  private static RehearsalRun tied() throws BadInputException {
    EarCase ear = ShippedEar.of("open_fold");
    Auricle auricle = EarFitter.fit(ear.ear(), MeshLevel.PLANNING, "/ear").auricle();
    Tissue tissue = EarTissue.of(ear, auricle, MaterialTables.shipped());
    RehearsalRun run = new RehearsalRun(ear, auricle, tissue, RehearsalWatcher.SILENT);
    assertTrue(run.run().converged());
    return run;
  }

  private static Timeline year(RehearsalRun run, double bound_mm, double first_s, double growth) {
    TimeStepSettings usual = TimeStepSettings.USUAL;
    TimeStepSettings settings =
        new TimeStepSettings(
            usual.newton(),
            bound_mm,
            first_s,
            usual.smallest_s(),
            growth,
            usual.momentShare(),
            usual.mostSteps());
    Timeline line =
        EarHealing.measuredAlone(
            run.body(),
            run.measurer(),
            run.operations(),
            RehearsalSettings.usual().times_days(),
            settings,
            time_s -> true);
    assertTrue(line.converged(), line.words());
    return line;
  }

  private static double upper(Timeline line, double days) {
    return line.moments().stream()
        .filter(moment -> moment.days() == days)
        .mapToDouble(moment -> moment.measures().helixMastoidUpper_mm())
        .findFirst()
        .orElseThrow();
  }

  /** THEORY.md says so of the bound that is used: a tenth of it, at every time asked for. */
  @Test
  @Tag("slow")
  void stepsAFifthAsLongMoveNoDistanceByMoreThanATenthOfTheBound() throws BadInputException {
    RehearsalRun run = tied();
    TimeStepSettings usual = TimeStepSettings.USUAL;
    Timeline used = year(run, usual.tolerance_mm(), usual.first_s(), usual.growth());
    Timeline fine = year(run, usual.tolerance_mm() / 25, 1, 2);
    assertTrue(fine.steps() > 2 * used.steps(), fine.steps() + " against " + used.steps());
    for (MomentResult moment : used.moments()) {
      double there = moment.measures().helixMastoidUpper_mm();
      assertEquals(upper(fine, moment.days()), there, 0.1 * usual.tolerance_mm(), moment.label());
    }
  }

  @Test
  @Tag("full")
  void theTableOfStepsInTheTheoryIsWhatTheyGive() throws BadInputException, IOException {
    RehearsalRun run = tied();
    double[][] rows = {{0.002, 1, 2}, {0.02, 1, 4}, {0.05, 4, 6}, {0.1, 10, 4}};
    assertAll(Arrays.stream(rows).map(row -> () -> heldWithSteps(run, row)));
  }

  private static void heldWithSteps(RehearsalRun run, double[] row) throws IOException {
    Timeline line = year(run, row[0], row[1], row[2]);
    List<String> now = new ArrayList<>(List.of(String.valueOf(line.steps())));
    for (double days : new double[] {1, 7, 30, 365}) {
      now.add("%.4f".formatted(upper(line, days)));
    }
    held("| %s | %.0f | %.0f |".formatted(words(row[0]), row[1], row[2]), 4, now);
  }

  private static String words(double bound_mm) {
    return bound_mm == TimeStepSettings.USUAL.tolerance_mm() ? bound_mm + " (used)" : "" + bound_mm;
  }

  @ParameterizedTest
  @ValueSource(ints = {80, 160, 320})
  @Tag("full")
  void theTableOfRemodellingInTheTheoryIsWhatItGives(int days)
      throws BadInputException, IOException {
    Timeline fold = rehearsed("open_fold", days).timeline().orElseThrow();
    RehearsalResult pad = rehearsed("bolster_alone", days);
    Timeline held = pad.timeline().orElseThrow();
    double before = pad.before().measures().foldAngleUpper_deg();
    List<String> now =
        List.of(
            "%.3f".formatted(Calibration.meanLoss(fold)),
            "%.3f".formatted(fold.last().loss().getOrDefault(Level.UPPER, Double.NaN)),
            "%.3f".formatted(fold.last().loss().getOrDefault(Level.MIDDLE, Double.NaN)),
            "%.1f".formatted(fold.last().measures().foldAngleUpper_deg()),
            "%.1f".formatted(cutAtLast(fold)),
            "%.1f".formatted(before - held.last().measures().foldAngleUpper_deg()));
    held(days == 160 ? "| 160 (used) |" : "| %d |".formatted(days), 2, now);
  }

  /** Fold angle at the upper level if all threads were cut at the end, deg. */
  private static double cutAtLast(Timeline line) {
    return line.last().released().orElseThrow().foldAngleUpper_deg();
  }

  private static RehearsalResult rehearsed(String file, double remodelling_days)
      throws BadInputException {
    EarCase ear = ShippedEar.of(file);
    Map<String, Double> overrides = new TreeMap<>(ear.tissue().overrides());
    overrides.put("healing.remodelling_days", remodelling_days);
    TissueChoice tissue = new TissueChoice(ear.tissue().rows(), overrides, ear.tissue().press());
    RehearsalResult result =
        Rehearsal.run(
            new EarCase(ear.ear(), tissue, ear.plan(), ear.target()),
            RehearsalSettings.usual(),
            RehearsalWatcher.SILENT);
    assertTrue(result.converged());
    return result;
  }

  /** Compares the cells of a row, from a column on, with what they are now. */
  private static void held(String key, int column, List<String> now) throws IOException {
    String message = key + " " + String.join(" | ", now) + " |";
    String row =
        Files.readAllLines(Path.of("THEORY.md")).stream()
            .filter(line -> line.startsWith(key))
            .findFirst()
            .orElseThrow(() -> new AssertionError("no row in THEORY.md: " + message));
    String[] cells = row.split("\\|");
    IntStream.range(0, now.size())
        .forEach(
            i -> {
              String cell = cells[column + i].strip();
              int decimals = cell.contains(".") ? cell.length() - cell.indexOf('.') - 1 : 0;
              assertEquals(
                  Double.parseDouble(now.get(i)),
                  Double.parseDouble(cell),
                  UNITS * Math.pow(10, -decimals) * 1.0001,
                  message);
            });
  }
}
