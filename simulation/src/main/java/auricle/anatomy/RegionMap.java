package auricle.anatomy;

/** Which region a place on the chart belongs to. */
final class RegionMap {
  private static final double RIDGE = 1.2;
  private static final double TRAGUS_START = 1.1;
  private static final double ROOT_START = 1.215;
  private static final double ROOT_END = 0.025;
  private static final double FOSSA_START = 0.05;
  private static final double CRUS_START = 0.2;
  private static final double CYMBA_END = 0.5;
  private static final double BRANCHING = 0.47;
  private static final double ANTITRAGUS_START = 0.83;
  private static final double CAUDA_START = 0.78;
  static final double CAUDA_END = 0.925;
  private static final double FISSURE_START = 0.8;
  private static final double FISSURE_BREADTH = 2.4;
  private static final double MARGIN = 0.6;

  private RegionMap() {}

  /** The region at a place across a section. */
  static Region at(Section section, double across) {
    double a = section.around();
    if (across < Section.FOOT) {
      return section.ridge(across) > RIDGE ? Region.CRUS_HELICIS : Region.FLOOR;
    }
    if (a > ROOT_START || a < ROOT_END) {
      return across < Section.FOLD ? Region.CRUS_HELICIS : Region.HELIX;
    }
    if (a > TRAGUS_START) {
      return Region.TRAGUS;
    }
    double length = section.lengthAt(across);
    EarProfile profile = section.profile();
    return length < profile.fold() + profile.foldHalf() + MARGIN
        ? inner(a, length, profile)
        : outer(a, length, profile, across);
  }

  /** From the foot over the fold. */
  private static Region inner(double a, double length, EarProfile profile) {
    boolean fossa = a > FOSSA_START && a < BRANCHING && profile.edgeEnd() > profile.edgeStart();
    if (length > profile.fold() - profile.foldHalf() - MARGIN) {
      if (a < CRUS_START) {
        return Region.TRIANGULAR_FOSSA;
      }
      return a < BRANCHING
          ? Region.SUPERIOR_CRUS
          : a < ANTITRAGUS_START ? Region.ANTIHELIX : Region.ANTITRAGUS;
    }
    if (fossa && length > profile.edgeEnd() + MARGIN) {
      return Region.TRIANGULAR_FOSSA;
    }
    if (fossa && length > profile.edgeStart() - MARGIN) {
      return Region.INFERIOR_CRUS;
    }
    return a < CYMBA_END ? Region.CYMBA_WALL : Region.CAVUM_WALL;
  }

  /** From the fold to the free edge. */
  private static Region outer(double a, double length, EarProfile profile, double across) {
    if (a > CAUDA_END) {
      return Region.LOBULE;
    }
    double beyond = length - profile.fold() - profile.foldHalf() - MARGIN;
    if (a > FISSURE_START && beyond < FISSURE_BREADTH) {
      return Region.FISSURE;
    }
    if (a > CAUDA_START) {
      return Region.CAUDA_HELICIS;
    }
    if (across > Section.SCAPHA_END) {
      return Region.HELIX;
    }
    return a < CRUS_START ? Region.TRIANGULAR_FOSSA : Region.SCAPHA;
  }
}
