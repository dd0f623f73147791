package auricle.testing;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CheckTest {
  private static void refused(Runnable check, String word) {
    AssertionError error = assertThrows(AssertionError.class, check::run);
    assertTrue(String.valueOf(error.getMessage()).contains(word), error.getMessage());
  }

  @Test
  void closeValuesPass() {
    Check.close(1.0005, 1, 1e-3, "made up");
    Check.close(1e-9, 0, 1e-8, 1, "made up");
    Check.within(0.01, 302.4e-3, 301.9e-3, "made up");
  }

  @Test
  void aDistantValueFailsWithItsSourceAndDifference() {
    refused(() -> Check.close(1.02, 1, 1e-2, "a book of 1925"), "a book of 1925");
    refused(() -> Check.close(1.02, 1, 1e-2, "a book of 1925"), "0.02");
  }

  @Test
  void aToleranceAboveTheMagnitudeIsRefusedThoughTheValueAgrees() {
    refused(() -> Check.close(1e-6, 1e-6, 1e-3, "made up"), "too loose");
    refused(() -> Check.close(0, 0, 1e-12, "made up"), "too loose");
    refused(() -> Check.close(1, 1, Double.NaN, "made up"), "too loose");
  }

  @Test
  void aValueThatIsNoNumberFails() {
    refused(() -> Check.close(Double.NaN, 1, 1e-3, "made up"), "NaN");
  }
}
