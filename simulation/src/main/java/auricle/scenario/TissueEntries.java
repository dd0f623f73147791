package auricle.scenario;

import auricle.plan.PressTest;
import auricle.plan.TissueChoice;
import auricle.yamlfile.Entry;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The choice of tissue: a number or a variant for each row of the tables that is named. */
final class TissueEntries {
  private TissueEntries() {}

  static TissueChoice choice(EarPart part, Optional<PressTest> press) {
    Map<String, String> rows = new TreeMap<>();
    Map<String, Double> overrides = new TreeMap<>();
    for (Entry tissue : part.both("tissue")) {
      for (String key : tissue.keys()) {
        Entry value = tissue.get(key);
        rows.remove(key);
        overrides.remove(key);
        if (value.node().isNumber()) {
          overrides.put(key, value.node().asDouble());
        } else {
          rows.put(key, value.string());
        }
      }
    }
    return new TissueChoice(rows, overrides, press);
  }
}
