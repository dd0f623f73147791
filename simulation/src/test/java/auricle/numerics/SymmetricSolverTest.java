package auricle.numerics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.numerics.GridMatrix.Coupling;
import auricle.numerics.GridMatrix.Numbering;
import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SymmetricSolverTest {
  private static final double AGREEMENT = 1e-12;

  @ParameterizedTest
  @CsvSource({
    "20, 30, HINGE, THREE_TOGETHER",
    "20, 30, RING2, THREE_TOGETHER",
    "40, 60, HINGE, THREE_TOGETHER",
    "20, 30, HINGE, THREE_THEN_TWO",
    "1, 1, HINGE, THREE_TOGETHER",
    "1, 200, HINGE, THREE_THEN_TWO"
  })
  void agreesWithTheLibraryOnDefiniteMatrices(
      int nodesX, int nodesY, Coupling coupling, Numbering numbering) {
    SymmetricMatrix matrix = GridMatrix.definite(nodesX, nodesY, coupling, numbering, 11);
    SymmetricSolver ours = SymmetricSolvers.create(matrix.pattern());
    SymmetricSolver library = SymmetricSolvers.reference(matrix.pattern());
    assertTrue(ours.factorize(matrix).positiveDefinite());
    assertTrue(library.factorize(matrix).positiveDefinite());
    double[] b = randomVector(matrix.pattern().size(), 3);
    double[] x = new double[b.length];
    double[] reference = new double[b.length];
    ours.solve(b, x);
    library.solve(b, reference);
    assertArrayEquals(reference, x, AGREEMENT * largest(reference));
    ours.solve(b, b);
    assertArrayEquals(x, b, 0, "solution may overwrite the right-hand side");
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void inertiaCountsTheSignsOfTheEigenvalues(long seed) {
    SymmetricMatrix matrix =
        GridMatrix.indefinite(5, 6, Coupling.HINGE, Numbering.THREE_THEN_TWO, seed);
    Inertia inertia = SymmetricSolvers.create(matrix.pattern()).factorize(matrix);
    double[] eigenvalues =
        new EigenDecomposition(new Array2DRowRealMatrix(dense(matrix))).getRealEigenvalues();
    assertEquals(Arrays.stream(eigenvalues).filter(e -> e > 0).count(), inertia.positive());
    assertEquals(Arrays.stream(eigenvalues).filter(e -> e < 0).count(), inertia.negative());
    assertFalse(inertia.broken());
  }

  @Test
  void solvesIndefiniteSystems() {
    SymmetricMatrix matrix =
        GridMatrix.indefinite(20, 30, Coupling.RING2, Numbering.THREE_TOGETHER, 5);
    SymmetricSolver solver = SymmetricSolvers.create(matrix.pattern());
    Inertia inertia = solver.factorize(matrix);
    assertTrue(inertia.negative() > 0 && inertia.positive() > 0);
    assertEquals(matrix.pattern().size(), inertia.negative() + inertia.positive());
    double[] x = randomVector(matrix.pattern().size(), 4);
    double[] b = new double[x.length];
    matrix.multiply(x, b);
    solver.solve(b, b);
    assertArrayEquals(x, b, 1e-12);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, Double.NaN, Double.POSITIVE_INFINITY})
  void aSpoiltDiagonalBreaksTheFactorisationAndSolveRefuses(double spoilt) {
    SymmetricMatrix matrix = GridMatrix.definite(6, 7, Coupling.HINGE, Numbering.THREE_TOGETHER, 5);
    SymmetricSolver solver = SymmetricSolvers.create(matrix.pattern());
    assertTrue(solver.factorize(matrix).positiveDefinite());
    int column = 17;
    clearCross(matrix, column, spoilt);
    Inertia inertia = solver.factorize(matrix);
    assertTrue(inertia.broken());
    assertEquals(column, inertia.brokenColumn());
    double[] x = new double[matrix.pattern().size()];
    assertThrows(IllegalStateException.class, () -> solver.solve(x, x));
  }

  @Test
  void solveRefusesBeforeTheFirstFactorisation() {
    SymmetricMatrix matrix = GridMatrix.definite(2, 2, Coupling.HINGE, Numbering.THREE_TOGETHER, 5);
    SymmetricSolver solver = SymmetricSolvers.create(matrix.pattern());
    double[] x = new double[matrix.pattern().size()];
    assertThrows(IllegalStateException.class, () -> solver.solve(x, x));
  }

  @ParameterizedTest
  @CsvSource({"5, 6, 40", "9, 8, 40", "20, 30, 20", "40, 60, 4"})
  void aMatrixWithARigidMotionIsBroken(int nodesX, int nodesY, int matrices) {
    for (long seed = 1; seed <= matrices; seed++) {
      SymmetricMatrix matrix =
          GridMatrix.definite(nodesX, nodesY, Coupling.HINGE, Numbering.THREE_TOGETHER, seed);
      removeRowSums(matrix);
      Inertia inertia = SymmetricSolvers.create(matrix.pattern()).factorize(matrix);
      assertTrue(inertia.broken(), "seed " + seed);
    }
  }

  @Test
  void aNanAnywhereIsBroken() {
    SymmetricMatrix clean = GridMatrix.definite(4, 4, Coupling.HINGE, Numbering.THREE_TOGETHER, 6);
    SymmetricSolver solver = SymmetricSolvers.create(clean.pattern());
    for (int p = 0; p < clean.values().length; p++) {
      double keep = clean.values()[p];
      clean.values()[p] = Double.NaN;
      assertTrue(solver.factorize(clean).broken(), "entry " + p);
      clean.values()[p] = keep;
    }
    assertTrue(solver.factorize(clean).positiveDefinite());
  }

  @Test
  void aMatrixOnAnotherPatternIsRefused() {
    SymmetricMatrix one = GridMatrix.definite(4, 4, Coupling.HINGE, Numbering.THREE_TOGETHER, 6);
    SymmetricMatrix two = GridMatrix.definite(4, 4, Coupling.HINGE, Numbering.THREE_TOGETHER, 7);
    SymmetricSolver solver = SymmetricSolvers.create(one.pattern());
    assertThrows(IllegalArgumentException.class, () -> solver.factorize(two));
  }

  @Test
  void refactorisationAllocatesNothingThatGrowsWithTheMatrix() {
    SymmetricMatrix matrix =
        GridMatrix.definite(20, 30, Coupling.HINGE, Numbering.THREE_TOGETHER, 8);
    SymmetricSolver solver = SymmetricSolvers.create(matrix.pattern());
    double[] b = randomVector(matrix.pattern().size(), 9);
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long thread = Thread.currentThread().getId();
    long least = Long.MAX_VALUE;
    for (int k = 0; k < 20; k++) {
      long before = threads.getThreadAllocatedBytes(thread);
      Inertia inertia = solver.factorize(matrix);
      solver.solve(b, b);
      least = Math.min(least, threads.getThreadAllocatedBytes(thread) - before);
      assertTrue(inertia.positiveDefinite());
    }
    long oneInertiaAndWhatIsHandedToWorkers = 256;
    assertTrue(least <= oneInertiaAndWhatIsHandedToWorkers, least + " bytes");
  }

  @Test
  void theSameMatrixGivesTheSameBits() {
    double[] first = solveOnce();
    double[] second = solveOnce();
    assertArrayEquals(first, second, 0);
  }

  /** Large enough for columns of the top supernodes to be shared out. */
  @Test
  void anyNumberOfThreadsGivesTheSameBits() throws Exception {
    SymmetricMatrix matrix =
        GridMatrix.indefinite(40, 60, Coupling.RING2, Numbering.THREE_THEN_TWO, 8);
    SymmetricSolver solver = SymmetricSolvers.create(matrix.pattern());
    double[] b = randomVector(matrix.pattern().size(), 9);
    double[] alone = new double[b.length];
    Inertia signs = Workers.ALONE.within(() -> solver.factorize(matrix));
    solver.solve(b, alone);
    assertFalse(signs.broken());
    for (int threads : new int[] {2, 3, 4, 2, 3, 4}) {
      double[] together = new double[b.length];
      assertEquals(signs, Workers.of(threads).within(() -> solver.factorize(matrix)));
      solver.solve(b, together);
      assertArrayEquals(alone, together, 0, threads + " threads");
    }
  }

  /** The column named is the first that breaks down, and columns before it are counted. */
  @Test
  void anyNumberOfThreadsBreaksDownAtTheSameColumn() throws Exception {
    SymmetricMatrix matrix =
        GridMatrix.definite(40, 60, Coupling.RING2, Numbering.THREE_THEN_TWO, 8);
    for (int column : new int[] {7, 4_001, 9_302}) {
      clearCross(matrix, column, 0);
    }
    SymmetricSolver solver = SymmetricSolvers.create(matrix.pattern());
    Inertia alone = Workers.ALONE.within(() -> solver.factorize(matrix));
    assertTrue(alone.broken());
    for (int threads : new int[] {2, 3, 4}) {
      assertEquals(alone, Workers.of(threads).within(() -> solver.factorize(matrix)));
    }
  }

  private static double[] solveOnce() {
    SymmetricMatrix matrix =
        GridMatrix.definite(20, 30, Coupling.HINGE, Numbering.THREE_THEN_TWO, 8);
    SymmetricSolver solver = SymmetricSolvers.create(matrix.pattern());
    double[] b = randomVector(matrix.pattern().size(), 9);
    solver.factorize(matrix);
    solver.solve(b, b);
    return b;
  }

  private static void clearCross(SymmetricMatrix matrix, int column, double diagonal) {
    int[] start = matrix.pattern().columnStart();
    for (int j = 0; j < matrix.pattern().size(); j++) {
      for (int p = start[j]; p < start[j + 1]; p++) {
        if (j == column || matrix.pattern().rowIndex()[p] == column) {
          matrix.values()[p] = 0;
        }
      }
    }
    matrix.addToDiagonal(column, diagonal);
  }

  /** Makes the vector of ones a null vector, all else being positive. */
  private static void removeRowSums(SymmetricMatrix matrix) {
    int n = matrix.pattern().size();
    int[] start = matrix.pattern().columnStart();
    for (int j = 0; j < n; j++) {
      for (int p = start[j] + 1; p < start[j + 1]; p++) {
        matrix.values()[p] = -Math.abs(matrix.values()[p]);
      }
    }
    double[] ones = new double[n];
    Arrays.fill(ones, 1);
    double[] sums = new double[n];
    matrix.multiply(ones, sums);
    for (int j = 0; j < n; j++) {
      matrix.addToDiagonal(j, -sums[j]);
    }
  }

  private static double[][] dense(SymmetricMatrix matrix) {
    int n = matrix.pattern().size();
    double[][] full = new double[n][n];
    double[] unit = new double[n];
    for (int j = 0; j < n; j++) {
      unit[j] = 1;
      matrix.multiply(unit, full[j]);
      unit[j] = 0;
    }
    return full;
  }

  private static double[] randomVector(int n, long seed) {
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
    double[] x = new double[n];
    Arrays.setAll(x, i -> 2 * random.nextDouble() - 1);
    return x;
  }

  private static double largest(double[] x) {
    return Arrays.stream(x).map(Math::abs).max().orElse(0);
  }
}
