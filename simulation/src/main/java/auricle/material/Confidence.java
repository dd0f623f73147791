package auricle.material;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How sure a number of the tables is. */
public enum Confidence {
  /** Read in the source itself. */
  SEEN("seen", "read in the source"),
  /** Read in a text about the source. */
  SECOND_HAND("2nd", "read in a text about the source"),
  /** Recalled; nobody has opened the source. */
  MEMORY("memory", "recalled; the source was not opened"),
  /** Arithmetic on other numbers, named in the source. */
  DERIVED("derived", "arithmetic on other rows or sources"),
  /** Common practice of the trade. */
  PRACTICE("practice", "common practice, without a source"),
  /** Fitted to results, named in the source. */
  CALIBRATED("calibrated", "fitted by this project to published results"),
  /** Chosen by this project where nothing is known. */
  ASSUMED("assumed", "chosen by this project, measured by no one");

  private final String key;
  private final String words;

  Confidence(String key, String words) {
    this.key = key;
    this.words = words;
  }

  /** The word in tables. */
  public String key() {
    return key;
  }

  /** What it means. */
  public String words() {
    return words;
  }

  /** The one of a word in a table. */
  public static Optional<Confidence> of(String key) {
    return Arrays.stream(values()).filter(c -> c.key.equals(key)).findFirst();
  }

  /** All words. */
  public static List<String> keys() {
    return Arrays.stream(values()).map(Confidence::key).toList();
  }
}
