package auricle.equilibrium;

/**
 * The direction of a path at one of its states: dx and dλ for a motion in which the fastest vertex
 * coordinate moves by 1 mm.
 */
final class PathTangent {
  private final double[] motion;
  private final double load;
  private final boolean[] coordinate;
  private final Supports supports;

  /**
   * @param rate v = dx/dλ
   * @param forward whether λ grows along the path
   */
  PathTangent(TotalEnergy energy, double[] rate, boolean forward) {
    supports = energy.supports();
    coordinate = new boolean[rate.length];
    double fastest = 0;
    for (int k = 0; k < rate.length; k++) {
      coordinate[k] = energy.supports().unknown(k) < energy.supports().firstTilt();
      fastest = coordinate[k] ? Math.max(fastest, Math.abs(rate[k])) : fastest;
    }
    load = (forward ? 1 : -1) / fastest;
    motion = new double[rate.length];
    for (int k = 0; k < rate.length; k++) {
      motion[k] = load * rate[k];
    }
  }

  /** The same path the other way if that goes on better from an earlier tangent. */
  static PathTangent after(PathTangent earlier, TotalEnergy energy, double[] rate) {
    PathTangent forward = new PathTangent(energy, rate, true);
    return earlier.along(forward.motion) >= 0 ? forward : new PathTangent(energy, rate, false);
  }

  /** Whether there is a direction at all. */
  boolean defined() {
    return Double.isFinite(load);
  }

  /** dx; shared. */
  double[] motion() {
    return motion;
  }

  /** dλ. */
  double load() {
    return load;
  }

  /** Product with a change of the coordinates; tilts, whose frames move, stay out. */
  double along(double[] d) {
    double sum = 0;
    for (int k = 0; k < d.length; k++) {
      sum += coordinate[k] ? motion[k] * d[k] : 0;
    }
    return sum;
  }

  /** Cosine of the angle to another tangent, by the coordinates. */
  double cosine(PathTangent other) {
    return along(other.motion) / Math.sqrt(along(motion) * other.along(other.motion));
  }

  /** Length of the path between two states, if it went along here: motion of the fastest, mm. */
  double arc(EquilibriumState from, EquilibriumState to) {
    double[] a = from.unknowns();
    double[] b = to.unknowns();
    double[] d = new double[motion.length];
    for (int k = 0; k < d.length; k++) {
      d[k] = b[supports.unknown(k)] - a[supports.unknown(k)];
    }
    return along(d) / along(motion);
  }
}
