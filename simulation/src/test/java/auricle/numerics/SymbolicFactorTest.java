package auricle.numerics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import auricle.numerics.GridMatrix.Coupling;
import auricle.numerics.GridMatrix.Numbering;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class SymbolicFactorTest {
  private static SymmetricMatrix matrix(int nodesX) {
    return GridMatrix.definite(nodesX, 9, Coupling.HINGE, Numbering.THREE_TOGETHER, 5);
  }

  private static double[] solution(SymmetricSolver solver, SymmetricMatrix matrix) {
    int n = matrix.pattern().size();
    double[] b = new double[n];
    double[] x = new double[n];
    Arrays.setAll(b, i -> Math.sin(i));
    solver.factorize(matrix);
    solver.solve(b, x);
    return x;
  }

  @Test
  void equalPatternsShareOne() {
    SymmetricPattern pattern = matrix(12).pattern();
    SymbolicFactor first = SymbolicFactor.of(pattern);
    SymmetricPattern equal =
        new SymmetricPattern(
            pattern.size(), pattern.columnStart().clone(), pattern.rowIndex().clone());
    assertSame(first, SymbolicFactor.of(equal));
  }

  /** As many unknowns, one entry moved. */
  @Test
  void otherPatternsHaveTheirOwn() {
    int[] start = {0, 2, 3, 4};
    SymbolicFactor one = SymbolicFactor.of(new SymmetricPattern(3, start, new int[] {0, 1, 1, 2}));
    SymbolicFactor two = SymbolicFactor.of(new SymmetricPattern(3, start, new int[] {0, 2, 1, 2}));
    assertNotEquals(one, two);
    SymbolicFactor larger = SymbolicFactor.of(matrix(12).pattern());
    assertEquals(matrix(12).pattern().size(), larger.layout().size());
  }

  /** Two solvers on one analysis keep numbers of their own. */
  @Test
  void solversThatShareDoNotDisturbEachOther() {
    SymmetricMatrix matrix = matrix(12);
    SymmetricSolver first = SymmetricSolvers.create(matrix.pattern());
    double[] x = solution(first, matrix);
    SymmetricMatrix doubled = matrix(12);
    for (int i = 0; i < doubled.values().length; i++) {
      doubled.values()[i] *= 2;
    }
    double[] half = solution(SymmetricSolvers.create(doubled.pattern()), doubled);
    double[] again = new double[x.length];
    double[] b = new double[x.length];
    Arrays.setAll(b, i -> Math.sin(i));
    first.solve(b, again);
    assertArrayEquals(x, again);
    assertEquals(x[7] / 2, half[7], 1e-15 * Math.abs(x[7]));
  }
}
