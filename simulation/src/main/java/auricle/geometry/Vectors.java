package auricle.geometry;

/** Plain arithmetic on vectors held as {@code double[3]}; nothing here changes its arguments. */
public final class Vectors {
  private Vectors() {}

  /** The three numbers of {@code array} that begin at {@code from}. */
  public static double[] at(double[] array, int from) {
    return new double[] {array[from], array[from + 1], array[from + 2]};
  }

  /** a + s b. */
  public static double[] add(double[] a, double s, double[] b) {
    return new double[] {a[0] + s * b[0], a[1] + s * b[1], a[2] + s * b[2]};
  }

  /** a − b. */
  public static double[] subtract(double[] a, double[] b) {
    return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
  }

  /** s a. */
  public static double[] scale(double s, double[] a) {
    return new double[] {s * a[0], s * a[1], s * a[2]};
  }

  /** a · b. */
  public static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  /** a × b. */
  public static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  /** Length of a. */
  public static double norm(double[] a) {
    return Math.sqrt(dot(a, a));
  }

  /**
   * a divided by its length.
   *
   * @throws IllegalArgumentException if a has no direction
   */
  public static double[] unit(double[] a) {
    double length = norm(a);
    if (!(length > 0) || Double.isInfinite(length)) {
      throw new IllegalArgumentException("a vector of length " + length + " has no direction");
    }
    return scale(1 / length, a);
  }
}
