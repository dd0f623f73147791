package auricle.mesh;

/**
 * One triangle laid flat: its edge vectors in its own plane axes, x along edge 0 (from corner 1 to
 * corner 2), y across it, the normal towards the reader when the corners run anticlockwise.
 */
public final class PlateShape {
  private final double[] edge;
  private final double area;

  private PlateShape(double[] edge, double area) {
    this.edge = edge;
    this.area = area;
  }

  /**
   * From three squared edge lengths.
   *
   * @throws IllegalArgumentException if no triangle has these edges
   */
  static PlateShape of(double[] squared, int at) {
    double l0 = Math.sqrt(squared[at]);
    // corner 0 seen from corner 1: along = −e2·x, from the law of cosines
    double along = (squared[at] + squared[at + 2] - squared[at + 1]) / (2 * l0);
    double height = Math.sqrt(squared[at + 2] - along * along);
    if (!(height > 0) || !(l0 > 0)) {
      throw new IllegalArgumentException("no triangle has these edge lengths");
    }
    double[] edge = {l0, 0, along - l0, height, -along, -height};
    return new PlateShape(edge, l0 * height / 2);
  }

  /** Area, mm². */
  public double area() {
    return area;
  }

  /** Component of edge k along edge 0, mm. */
  public double edgeX(int k) {
    return edge[2 * k];
  }

  /** Component of edge k across edge 0, mm. */
  public double edgeY(int k) {
    return edge[2 * k + 1];
  }

  /** Length of edge k, mm. */
  public double length(int k) {
    return Math.hypot(edge[2 * k], edge[2 * k + 1]);
  }

  /** Gradient of barycentric coordinate i along x, 1/mm. */
  public double slopeX(int i) {
    return -edge[2 * i + 1] / (2 * area);
  }

  /** Gradient of barycentric coordinate i along y, 1/mm. */
  public double slopeY(int i) {
    return edge[2 * i] / (2 * area);
  }

  /**
   * Tilts d_i·e_k (entry 3 i + k) that a flat triangle takes when its surface becomes the quadratic
   * one of the given curvature through its three corners.
   */
  double[] tiltsOfCurvature(double xx, double yy, double xy) {
    double[] tilt = new double[9];
    for (int i = 0; i < 3; i++) {
      // along an edge of chord e the quadratic has slope ∓½ e·b·e at its ends, and d is its normal
      int j = (i + 1) % 3;
      int k = (i + 2) % 3;
      double atJ = bend(j, xx, yy, xy) / 2; // edge j runs from k to i: corner i is its end
      double atK = -bend(k, xx, yy, xy) / 2; // edge k runs from i to j: corner i is its start
      tilt[3 * i + j] = atJ;
      tilt[3 * i + k] = atK;
      tilt[3 * i + i] = -atJ - atK;
    }
    return tilt;
  }

  private double bend(int k, double xx, double yy, double xy) {
    double x = edge[2 * k];
    double y = edge[2 * k + 1];
    return xx * x * x + yy * y * y + 2 * xy * x * y;
  }
}
