package auricle.analysis;

/** Directors whose turns about an axis are summed from state to state. */
final class FollowedTurn {
  private final String probe;
  private final int[] vertices;
  private final double[] axis;

  /**
   * @param probe name of the probe that asks
   * @param axis unit vector
   */
  FollowedTurn(String probe, int[] vertices, double[] axis) {
    this.probe = probe;
    this.vertices = vertices.clone();
    this.axis = axis.clone();
  }

  String probe() {
    return probe;
  }

  int[] vertices() {
    return vertices.clone();
  }

  double[] axis() {
    return axis.clone();
  }
}
