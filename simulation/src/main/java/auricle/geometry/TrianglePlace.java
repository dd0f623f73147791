package auricle.geometry;

/**
 * A point beside a triangle, in coordinates that ride on it: where its foot on the plane of the
 * triangle stands among the corners, and how high it is above that.
 *
 * <pre>
 *   p = x_0 + w_1 (x_1 − x_0) + w_2 (x_2 − x_0) + h n
 * </pre>
 *
 * <p>n is the unit normal ({@link PlateFrame}). When the triangle moves rigidly, so does the point.
 *
 * @param weight1 w_1; negative or above 1 where the foot lies outside of the triangle
 * @param weight2 w_2
 * @param height h, signed, in the unit of the coordinates
 */
public record TrianglePlace(double weight1, double weight2, double height) {
  /** The coordinates of a point p by a triangle, {@code double[3]} each. */
  public static TrianglePlace of(double[] x0, double[] x1, double[] x2, double[] p) {
    PlateFrame frame = new PlateFrame(x0, x1, x2);
    // the tips are minus the gradients of the barycentric coordinates
    return new TrianglePlace(
        -Vectors.dot(frame.tip(1), Vectors.subtract(p, x0)),
        -Vectors.dot(frame.tip(2), Vectors.subtract(p, x0)),
        Vectors.dot(frame.normal(), Vectors.subtract(p, x0)));
  }
}
