package auricle.energy;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;
import org.apache.commons.math3.linear.RealMatrix;

/** Newton with shift and halving on dense matrices, enough to try a few terms together. */
final class SmallNewton {
  private static final int MOST_ITERATIONS = 300;

  private SmallNewton() {}

  /**
   * Moves u to where the residual is below a tolerance, N.
   *
   * @return iterations used, or {@value #MOST_ITERATIONS} if it was not reached
   */
  static int solve(double[] u, double tolerance, EnergyTerm... terms) {
    for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
      double[] gradient = new double[u.length];
      double[][] hessian = new double[u.length][u.length];
      for (EnergyTerm term : terms) {
        term.update(u);
        assemble(term, u, gradient, hessian);
      }
      if (Shapes.largest(gradient) < tolerance) {
        return iteration;
      }
      System.arraycopy(lower(u, descent(hessian, gradient), terms), 0, u, 0, u.length);
    }
    return MOST_ITERATIONS;
  }

  private static double[] lower(double[] u, double[] direction, EnergyTerm... terms) {
    double t = 1;
    for (EnergyTerm term : terms) {
      t = Math.min(t, term.largestStep(u, direction));
    }
    double before = total(u, terms);
    double[] next = along(u, t, direction);
    while (!(total(next, terms) <= before + 1e-13 * Math.abs(before)) && t > 1e-9) {
      t /= 2;
      next = along(u, t, direction);
    }
    return next;
  }

  /** Newton's step; where the energy is not convex, with as much on the diagonal as it takes. */
  private static double[] descent(double[][] hessian, double[] gradient) {
    double shift = 0;
    while (true) {
      RealMatrix shifted = new Array2DRowRealMatrix(hessian);
      for (int i = 0; i < gradient.length; i++) {
        shifted.addToEntry(i, i, shift);
      }
      try {
        return new CholeskyDecomposition(shifted, 1e-6, 1e-10)
            .getSolver()
            .solve(new ArrayRealVector(gradient))
            .mapMultiply(-1)
            .toArray();
      } catch (NonPositiveDefiniteMatrixException e) {
        shift = Math.max(2 * shift, 0.01);
      }
    }
  }

  private static double[] along(double[] a, double t, double[] b) {
    double[] sum = a.clone();
    for (int i = 0; i < a.length; i++) {
      sum[i] += t * b[i];
    }
    return sum;
  }

  private static double total(double[] u, EnergyTerm... terms) {
    return Arrays.stream(terms).mapToDouble(term -> Shapes.energy(term, u)).sum();
  }

  private static void assemble(EnergyTerm term, double[] u, double[] gradient, double[][] hessian) {
    for (int i = 0; i < term.count(); i++) {
      int[] stencil = term.stencil(i);
      int n = stencil.length;
      double[] g = new double[n];
      double[] h = new double[n * n];
      term.derivatives(i, u, g, h);
      for (int r = 0; r < n; r++) {
        gradient[stencil[r]] += g[r];
        for (int c = 0; c < n; c++) {
          hessian[stencil[r]][stencil[c]] += (h[r * n + c] + h[c * n + r]) / 2;
        }
      }
    }
  }
}
