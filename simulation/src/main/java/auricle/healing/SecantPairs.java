package auricle.healing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/**
 * What steps have told about the curvature of a function since its Hessian was factorised: the
 * two-loop recursion of Nocedal (1980, Math Comput 35:773-782) about the inverse of that Hessian.
 */
final class SecantPairs {
  private final BiConsumer<double[], double[]> inverse;
  private final List<double[]> steps = new ArrayList<>();
  private final List<double[]> changes = new ArrayList<>();
  private final List<Double> products = new ArrayList<>();

  /**
   * @param inverse (b, x): x = K⁻¹ b with the factorised Hessian, positive definite
   */
  SecantPairs(BiConsumer<double[], double[]> inverse) {
    this.inverse = inverse;
  }

  /**
   * Learns that the gradient changed by y over a step s; left aside if the curvature is not
   * positive.
   */
  void learn(double[] s, double[] y) {
    double product = dot(s, y);
    if (product > 0) {
      steps.add(s);
      changes.add(y);
      products.add(product);
    }
  }

  /** H g, H ≈ inverse Hessian where it is now. */
  double[] times(double[] g) {
    double[] q = g.clone();
    double[] share = new double[steps.size()];
    for (int i = share.length - 1; i >= 0; i--) {
      share[i] = dot(steps.get(i), q) / products.get(i);
      add(-share[i], changes.get(i), q);
    }
    double[] r = new double[q.length];
    inverse.accept(q, r);
    for (int i = 0; i < share.length; i++) {
      add(share[i] - dot(changes.get(i), r) / products.get(i), steps.get(i), r);
    }
    return r;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static void add(double factor, double[] a, double[] to) {
    for (int i = 0; i < a.length; i++) {
      to[i] += factor * a[i];
    }
  }
}
