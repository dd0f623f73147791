package auricle.viewer.task;

import java.util.List;

/**
 * Something to look at twice, in words.
 *
 * @param words a sentence
 * @param basis what was measured, against what limit, from which source
 * @param operation name of the step it is about; empty if none
 * @param levels_percent heights it is about, % of ear height; empty if the whole ear
 */
public record Caution(String words, String basis, String operation, List<Double> levels_percent) {
  /** Keeps its own copy. */
  public Caution {
    levels_percent = List.copyOf(levels_percent);
  }
}
