package auricle.healing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class DurationsTest {
  @Test
  void timesAreSaidAsPeopleSayThem() {
    double day = Durations.DAY_S;
    assertEquals("40 s", Durations.words(40));
    assertEquals("1 min", Durations.words(60));
    assertEquals("19.6 min", Durations.words(1178.3));
    assertEquals("3 h", Durations.words(3 * 3600));
    assertEquals("1 day", Durations.words(day));
    assertEquals("1 week", Durations.words(7 * day));
    assertEquals("5 days", Durations.words(5 * day));
    assertEquals("1 month", Durations.words(30 * day));
    assertEquals("3 months", Durations.words(91 * day));
    assertEquals("12 months", Durations.words(365 * day));
  }
}
