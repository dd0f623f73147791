package auricle.material;

import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.rng.UniformRandomProvider;

/** Draws the numbers of a tissue from the spread of their rows. */
final class TissueSample {
  private TissueSample() {}

  /** One random share for each kind of number, in the order of their names. */
  static TissueValues of(TissueValues values, UniformRandomProvider random) {
    Map<String, Double> shares = new TreeMap<>();
    values.all().forEach(u -> shares.put(kind(u.row()), 0.5));
    shares.replaceAll((kind, share) -> inside(random.nextDouble()));
    return values.drawn(row -> row.quantile(shares.getOrDefault(kind(row), 0.5)));
  }

  /** The whole ear and its regions are of one kind. */
  private static String kind(MaterialRow row) {
    return row.quantity().key().replaceAll("\\{\\w+}\\.", "");
  }

  /** Within (0, 1): the ends of a normal distribution are at infinity. */
  private static double inside(double share) {
    return Math.max(share, 0x1p-53);
  }
}
