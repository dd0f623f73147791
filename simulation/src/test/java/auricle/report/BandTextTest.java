package auricle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.Level;
import auricle.healing.Bands;
import auricle.healing.Bands.Band;
import auricle.healing.EarState;
import auricle.healing.MomentResult;
import auricle.healing.Timeline;
import auricle.measurement.Figure;
import auricle.numerics.Outcome;
import auricle.report.picture.LevelFigures;
import auricle.report.picture.PaperEar;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The year at the terminal, with the spread by tissue. */
class BandTextTest {
  private static final List<String> LABELS =
      List.of("tied", "1 day", "1 week", "1 month", "3 months", "6 months", "12 months");

  private static Timeline year() {
    List<MomentResult> moments = new ArrayList<>();
    for (int i = 0; i < LABELS.size(); i++) {
      moments.add(
          new MomentResult(
              i,
              LABELS.get(i),
              PaperEar.moment(105).measures(),
              List.of(),
              Map.of(Level.UPPER, 0.2, Level.MIDDLE, -0.15),
              Optional.empty(),
              new EarState(new double[0], new double[0], Optional.empty()),
              List.of()));
    }
    return new Timeline(moments, Outcome.CONVERGED, "", 0, 0, 0, Optional.empty());
  }

  private static Bands bands(List<String> failures) {
    List<Band> all = new ArrayList<>();
    for (int i = 0; i < LABELS.size(); i++) {
      for (Figure figure : LevelFigures.COURSE) {
        all.add(new Band(i, figure.key(), 10.04 + i, 11, 12.06 + i));
      }
      all.add(new Band(i, "loss_upper", 0.02 * i, 0.1, 0.05 * i));
      all.add(new Band(i, "loss_lower", 0.01 * i, 0.1, 0.02 * i)); // of some samples alone
    }
    return new Bands(64, 7, failures, all);
  }

  @Test
  void withSamplesEveryTimeHasItsRangeAndLossesToo() {
    String text = CourseText.write(year().with(bands(List.of())));
    assertTrue(text.contains("64 tissues drawn from the tables (seed 7)"), text);
    assertTrue(text.contains("  tied       10.0 to 12.1  10.0 to 12.1"), text);
    assertTrue(text.contains("  12 months  16.0 to 18.1"), text);
    assertTrue(text.contains("Lost at 12 months: upper 12 to 30 %\n"), text);
    assertTrue(text.lines().allMatch(line -> line.length() <= 100), text);
  }

  @Test
  void aCorrectionThatGrowsIsGainedAndNotLostByLessThanNothing() {
    String text = CourseText.write(year());
    assertTrue(text.contains(" 20 %\n") && text.contains(" gained 15 %\n"), text);
  }

  @Test
  void samplesThatFailedAreCountedOutAndNamed() {
    String text = CourseText.write(year().with(bands(List.of("sample 3: the sheet crumples"))));
    assertTrue(text.contains("63 tissues"), text);
    assertTrue(text.contains("1 of 64 did not come to rest and take no part:\n"), text);
    assertTrue(text.contains("    sample 3: the sheet crumples\n"), text);
  }

  @Test
  void withoutSamplesNothingIsSaidOfThem() {
    assertEquals("", BandText.write(year()));
    assertTrue(!CourseText.write(year()).contains("Spread"));
  }
}
