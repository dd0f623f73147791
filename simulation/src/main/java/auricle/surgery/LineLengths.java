package auricle.surgery;

import auricle.anatomy.Curve;
import auricle.mesh.Topology;

/** Arc length along a landmark line at rest, against its chart coordinate. */
final class LineLengths {
  private final double[] around;
  private final double[] length;

  LineLengths(Curve curve, Topology topology, double[] positions) {
    double[] p = curve.points(topology, positions);
    around = curve.around().stream().mapToDouble(a -> a).toArray();
    length = new double[around.length];
    for (int i = 1; i < length.length; i++) {
      double dx = p[3 * i] - p[3 * i - 3];
      double dy = p[3 * i + 1] - p[3 * i - 2];
      double dz = p[3 * i + 2] - p[3 * i - 1];
      length[i] = length[i - 1] + Math.sqrt(dx * dx + dy * dy + dz * dz);
    }
  }

  /** Length from the start of the line, mm; that of an end beyond the ends. */
  double length(double at) {
    return between(around, length, at);
  }

  /** The chart coordinate at a length, mm; that of an end beyond the ends. */
  double around(double at_mm) {
    return between(length, around, at_mm);
  }

  private static double between(double[] from, double[] to, double at) {
    int i = 1;
    while (i < from.length - 1 && from[i] < at) {
      i++;
    }
    double step = from[i] - from[i - 1];
    double share = step > 0 ? (at - from[i - 1]) / step : 0;
    return to[i - 1] + Math.min(1, Math.max(0, share)) * (to[i] - to[i - 1]);
  }
}
