package auricle.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Share of a thread's strength that is left in tissue: straight lines through the known days from 1
 * on day 0, and on along the last line until nothing is left. A thread without known days keeps its
 * strength.
 */
public final class StrengthLeft {
  private record Known(double day, double share) {}

  private final List<Known> known = new ArrayList<>();

  /**
   * @param byDay share left by day, days above 0
   */
  StrengthLeft(Map<Double, Double> byDay) {
    known.add(new Known(0, 1));
    new TreeMap<>(byDay).forEach((day, share) -> known.add(new Known(day, share)));
  }

  /** Whether it loses strength at all. */
  public boolean absorbable() {
    return known.size() > 1;
  }

  /** Share left after so many days, in [0, 1]. */
  public double at(double days) {
    if (!absorbable() || days <= 0) {
      return 1;
    }
    int end = 1;
    while (end < known.size() - 1 && known.get(end).day() < days) {
      end++;
    }
    Known a = known.get(end - 1);
    Known b = known.get(end);
    double share = a.share() + (b.share() - a.share()) / (b.day() - a.day()) * (days - a.day());
    return Math.max(0, Math.min(1, share));
  }
}
