package auricle.surgery;

/**
 * How much of a triangle a band takes in, 0 … 1: all in the middle, falling linearly over the size
 * of a triangle at its edges, so that a dose that moves the band changes the body smoothly and the
 * area is right whatever the mesh.
 */
final class Band {
  private Band() {}

  /**
   * @param distance_mm of the triangle's centre from the middle of the band
   * @param width_mm of the band
   * @param size_mm of the triangle
   */
  static double share(double distance_mm, double width_mm, double size_mm) {
    double inside = (width_mm / 2 - Math.abs(distance_mm)) / size_mm + 0.5;
    double most = Math.min(1, width_mm / size_mm);
    return Math.min(most, Math.max(0, inside));
  }
}
