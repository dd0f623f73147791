package auricle.measurement;

/**
 * One leg of the scapha-conchal angle: at each station the straight line fitted by least squares to
 * evenly spaced points of the profile.
 *
 * <p>The back of a shell of even thickness runs parallel to its mid-surface, so the direction is
 * that of the posterior face.
 */
final class Leg {
  private final SampleBlock block;

  /**
   * @param block points evenly spaced along each profile, outwards
   */
  Leg(SampleBlock block) {
    this.block = block;
  }

  /** Direction of the line at a station, outwards, not of unit length, times a weight; added. */
  void addDirection(double[] points, int station, double weight, double[] sum) {
    for (int i = 0; i < block.across(); i++) {
      double share = weight * (i - (block.across() - 1) / 2.0);
      addPoint(points, block.at(station, i), share, sum);
    }
  }

  /** Middle of the line at a station times a weight; added. */
  void addMiddle(double[] points, int station, double weight, double[] sum) {
    for (int i = 0; i < block.across(); i++) {
      addPoint(points, block.at(station, i), weight / block.across(), sum);
    }
  }

  /** The fitted line at a station from its first to its last place, times a weight; added. */
  void addEnds(double[] points, int station, double weight, double[] first, double[] last) {
    int n = block.across();
    double half = (n - 1) / 2.0;
    double squares = n * (n * n - 1.0) / 12;
    addMiddle(points, station, weight, first);
    addMiddle(points, station, weight, last);
    addDirection(points, station, -weight * half / squares, first);
    addDirection(points, station, weight * half / squares, last);
  }

  private static void addPoint(double[] points, int at, double share, double[] sum) {
    for (int c = 0; c < 3; c++) {
      sum[c] += share * points[at + c];
    }
  }
}
