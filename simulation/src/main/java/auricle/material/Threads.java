package auricle.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Threads of the tables: every material in every size. */
final class Threads {
  private static final String DAY = "strength_left_day_";

  private final TissueValues values;

  Threads(TissueValues values) {
    this.values = values;
  }

  /** Keys of all threads. */
  List<String> keys() {
    return materials().stream().flatMap(m -> sizes().stream().map(s -> m + "_" + s)).toList();
  }

  private List<String> materials() {
    return values.names("thread.{material}.modulus_mpa");
  }

  private List<String> sizes() {
    return values.names("thread_size.{size}.diameter_mm").stream()
        .filter(s -> values.has("thread_size." + s + ".knot_pull_n"))
        .toList();
  }

  /** The thread of a key. */
  Optional<ThreadRow> of(String key) {
    return sizes().stream()
        .filter(s -> key.endsWith("_" + s))
        .filter(s -> materials().contains(key.substring(0, key.length() - s.length() - 1)))
        .findFirst()
        .map(s -> row(key, key.substring(0, key.length() - s.length() - 1), s));
  }

  private ThreadRow row(String key, String material, String size) {
    UsedRow diameter = values.used("thread_size." + size + ".diameter_mm");
    UsedRow knotPull = values.used("thread_size." + size + ".knot_pull_n");
    UsedRow modulus = values.used("thread." + material + ".modulus_mpa");
    List<UsedRow> rows = new ArrayList<>(List.of(diameter, knotPull, modulus));
    Map<Double, Double> left = new TreeMap<>();
    String before = "thread." + material + "." + DAY;
    for (UsedRow used : values.all()) {
      if (used.row().slot().startsWith(before)) {
        left.put(Double.valueOf(used.row().slot().substring(before.length())), used.value());
        rows.add(used);
      }
    }
    return new ThreadRow(
        key,
        material,
        size,
        diameter.value(),
        modulus.value(),
        knotPull.value(),
        new StrengthLeft(left),
        rows);
  }
}
