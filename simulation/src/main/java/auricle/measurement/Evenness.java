package auricle.measurement;

/**
 * How even a line runs: the rim, or the crest of the fold.
 *
 * @param smallestRadius_mm smallest radius of curvature anywhere on it
 * @param level_percent height of that place as a share of ear height
 * @param kinks number of places at which it bends sharply; the limit stands with the measurement
 */
public record Evenness(double smallestRadius_mm, double level_percent, int kinks) {}
