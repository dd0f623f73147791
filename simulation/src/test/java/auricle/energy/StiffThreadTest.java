package auricle.energy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.geometry.Vectors;
import auricle.mesh.Topology;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A loop through four bites on elastically bedded vertices, solved by Newton with shift and
 * halving.
 */
class StiffThreadTest {
  private static final int N = 4;
  private final Topology mesh = Shapes.grid(N, N);
  private final int size = 3 * mesh.vertexCount();
  private final double[] rest = Arrays.copyOf(Shapes.shaken(Shapes.flat(N, N), 0.1, 1), size);

  private ElasticAttachment bed() {
    double[] areas = new double[mesh.vertexCount()];
    Arrays.fill(areas, 1);
    int[] all = IntStream.range(0, mesh.vertexCount()).toArray();
    return ElasticAttachment.isotropic("bed", all, areas, rest, 1);
  }

  private ElasticThread loop(double axialStiffness) {
    return new ElasticThread(
        "loop",
        List.of(
            new SurfacePoint(mesh, 1, 0.2, 0.3, -0.5),
            new SurfacePoint(mesh, 6, 0.6, 0.1, -0.5),
            new SurfacePoint(mesh, 30, 0.3, 0.2, -0.5),
            new SurfacePoint(mesh, 25, 0.3, 0.3, -0.5)),
        true,
        axialStiffness);
  }

  /** Newton iterations until the residual is below 1e-9 N. */
  private int solve(double[] u, EnergyTerm... terms) {
    for (int iteration = 0; iteration < 100; iteration++) {
      double[] gradient = new double[size];
      double[][] hessian = new double[size][size];
      for (EnergyTerm term : terms) {
        assemble(term, u, gradient, hessian);
      }
      if (TermCheck.largest(gradient) < 1e-9) {
        return iteration;
      }
      double[] step = descent(hessian, gradient);
      double before = total(u, terms);
      double t = 1;
      double[] next = along(u, -t, step);
      while (total(next, terms) > before + 1e-13 * Math.abs(before) && t > 1e-6) {
        t /= 2;
        next = along(u, -t, step);
      }
      System.arraycopy(next, 0, u, 0, size);
    }
    return 100;
  }

  /**
   * Newton's step; where the energy is not convex, with as much added to the diagonal as it takes.
   */
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
          hessian[stencil[r]][stencil[c]] += h[r * n + c];
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {3, 300, 3e4})
  void newtonTightensTheLoopHoweverStiffTheThread(double axialStiffness) {
    ElasticThread thread = loop(axialStiffness);
    double length = thread.length(rest);
    thread.tighten(length, 0.8 * length);
    double[] u = rest.clone();
    int iterations = 0;
    for (int step = 1; step <= 4; step++) {
      thread.setLoadFactor(step / 4.0);
      iterations += solve(u, bed(), thread);
    }
    assertTrue(iterations < 80, axialStiffness + " N: " + iterations + " iterations");
    double stretched = thread.length(u) - 0.8 * length;
    assertEquals(axialStiffness / (0.8 * length) * stretched, thread.tension(u), 1e-9);
  }

  @Test
  void loopTiedAtATensionEndsWhereItsOwnLengthWouldHaveTakenIt() {
    ElasticThread pulled = loop(300);
    pulled.pull(0.8);
    double[] u = rest.clone();
    assertTrue(solve(u, bed(), pulled) < 20);
    assertEquals(0.8, pulled.tension(u));
    pulled.knot(u);
    assertTrue(solve(u, bed(), pulled) <= 1, "knotting does not move anything");
    ElasticThread tied = loop(300);
    ThreadLaw.Elastic law = (ThreadLaw.Elastic) pulled.law();
    tied.tieToLength(law.restLength_mm());
    double[] v = rest.clone();
    assertTrue(solve(v, bed(), tied) < 40);
    for (int i = 0; i < size; i += 3) {
      assertEquals(0, Vectors.norm(Vectors.subtract(Vectors.at(u, i), Vectors.at(v, i))), 1e-8);
    }
  }
}
