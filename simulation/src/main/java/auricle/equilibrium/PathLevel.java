package auricle.equilibrium;

/**
 * A value that a path may pass: of the load factor, or of an unknown.
 *
 * @param unknown index among all unknowns of a free coordinate; -1 for the load factor λ
 * @param value of λ, or of the coordinate, mm
 */
public record PathLevel(int unknown, double value) {
  /** A load factor. */
  public static PathLevel load(double lambda) {
    return new PathLevel(-1, lambda);
  }

  /** A place of a coordinate, mm: of x, y or z itself, not of its displacement. */
  public static PathLevel coordinate(int unknown, double place_mm) {
    return new PathLevel(unknown, place_mm);
  }

  /** What is levelled, at the present state of an energy. */
  double at(TotalEnergy energy) {
    return unknown < 0 ? energy.loadFactor() : energy.unknowns()[unknown];
  }

  /** Its rate along a path. */
  double slope(TotalEnergy energy, PathTangent tangent) {
    if (unknown < 0) {
      return tangent.load();
    }
    int free = energy.supports().freeNumber(unknown);
    return free < 0 ? 0 : tangent.motion()[free];
  }
}
