package auricle.viewer.viewmodel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import auricle.plan.Range;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far a level is off its target, in words. */
class BalanceRowTest {
  @ParameterizedTest
  @CsvSource({
    "deg, 30.0, within", "deg, 30.3, +0.3°", "deg, 34.4, +4°", "deg, 13.8, −1°",
    "mm, 15.0, within", "mm, 30.04, +0.04", "mm, 14.8, −0.2", "mm, 32.72, +2.7"
  })
  void whatIsOffIsNeverToldAsNothing(String unit, double now, String words) {
    BalanceRow row = new BalanceRow("level", unit, 36, now, 31, Range.of(15, 30), Optional.empty());
    assertEquals(words, row.verdict());
  }
}
