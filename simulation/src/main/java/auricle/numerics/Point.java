package auricle.numerics;

/** A place in the iteration together with the state of the function that goes with it. */
final class Point {
  private final double[] x;
  private double[] state = new double[0];
  private double value;
  private double residual;

  Point(int n) {
    x = new double[n];
  }

  /** Remembers. */
  void keep(SmoothFunction function, double[] from, double valueThere, double residualThere) {
    System.arraycopy(from, 0, x, 0, x.length);
    state = function.save();
    value = valueThere;
    residual = residualThere;
  }

  /** Goes back here: state and x. */
  void recall(SmoothFunction function, double[] to) {
    function.restore(state);
    System.arraycopy(x, 0, to, 0, x.length);
  }

  double[] x() {
    return x;
  }

  double value() {
    return value;
  }

  double residual() {
    return residual;
  }
}
