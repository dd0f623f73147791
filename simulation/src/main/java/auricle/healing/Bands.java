package auricle.healing;

import java.util.List;

/**
 * Spread of the figures over time by the spread of the tissue rows: every sample is an ear of its
 * own tissue, operated on and followed like the first.
 *
 * @param samples how many were asked for
 * @param seed of the first; sample i has a seed of its own made from it
 * @param failures what became of those that did not come to rest, in words; they take no part
 * @param figures the bands
 */
public record Bands(int samples, long seed, List<String> failures, List<Band> figures) {
  /** Share of the samples below the band, and above it. */
  public static final double TAIL = 0.1;

  /**
   * One figure at one time.
   *
   * @param days since tied
   * @param key of the figure, {@code helix_mastoid_upper_mm}, or {@code loss_upper} for the share
   *     lost at a level
   * @param low 10 % of the samples lie below
   * @param middle half of them
   * @param high 10 % lie above
   */
  public record Band(double days, String key, double low, double middle, double high) {}

  /** Keeps its own copies. */
  public Bands {
    failures = List.copyOf(failures);
    figures = List.copyOf(figures);
  }
}
