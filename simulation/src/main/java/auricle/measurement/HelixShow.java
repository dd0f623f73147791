package auricle.measurement;

/** The helix seen from the front, beyond the antihelix. */
final class HelixShow {
  private static final double SOFTNESS = 0.2;
  private static final double END = 0.5;

  private HelixShow() {}

  /**
   * Signed lateral distance of the most lateral line of the helix beyond that of the antihelix at
   * one height, mm; below 0 the antihelix hides the helix from the front.
   *
   * @param rim the helix, x, y, z a point, mm
   * @param crest the antihelix likewise
   * @param z height, mm
   */
  static double at(double[] rim, double[] crest, double z) {
    return HeightFit.at(rim, z)[0] - HeightFit.at(crest, z)[0];
  }

  /**
   * Length of rim between two heights over which the antihelix hides it from the front, mm: ∫ h ds
   * with h = 1 / (1 + exp(show / 0.2 mm)), so that a place with no show counts half.
   *
   * @param low lower height, mm
   * @param high upper height, mm
   */
  static double hiddenLength_mm(double[] rim, double[] crest, double low, double high) {
    double length = 0;
    for (int i = 3; i < rim.length; i += 3) {
      double z = (rim[i + 2] + rim[i - 1]) / 2;
      double within = step((z - low) / END) * step((high - z) / END);
      if (within > 1e-6) {
        double show = (rim[i] + rim[i - 3]) / 2 - HeightFit.at(crest, z)[0];
        length += within * step(-show / SOFTNESS) * distance(rim, i);
      }
    }
    return length;
  }

  private static double distance(double[] line, int i) {
    double x = line[i] - line[i - 3];
    double y = line[i + 1] - line[i - 2];
    double z = line[i + 2] - line[i - 1];
    return Math.sqrt(x * x + y * y + z * z);
  }

  private static double step(double t) {
    return 1 / (1 + Math.exp(-t));
  }
}
