package auricle.analysis;

/**
 * A vertex held along a direction that is none of x, y, z.
 *
 * @param vertex which
 * @param x component of the unit direction
 * @param y component of the unit direction
 * @param z component of the unit direction
 */
record AskewSupport(int vertex, double x, double y, double z) {
  double[] direction() {
    return new double[] {x, y, z};
  }
}
