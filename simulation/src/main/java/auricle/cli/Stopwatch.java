package auricle.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.StringJoiner;

/** Times of the parts of a run; kept out of the results, which are the same every time. */
final class Stopwatch {
  private final Map<String, Long> laps = new LinkedHashMap<>();
  private long last = System.nanoTime();

  /** Ends a part now. */
  void lap(String name) {
    lapAt(name, System.nanoTime());
  }

  /** Ends a part at a time of {@link System#nanoTime}. */
  void lapAt(String name, long at) {
    laps.put(name, (at - last) / 1_000_000);
    last = at;
  }

  /** The parts as JSON, in whole milliseconds. */
  String json() {
    StringJoiner json = new StringJoiner(",\n ", "{\n ", "\n}\n");
    laps.forEach((name, ms) -> json.add("\"" + name + "\": " + ms));
    return json.toString();
  }
}
