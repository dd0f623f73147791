package auricle.numerics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
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
    SymbolicFactor first = SymbolicFactor.of(pattern, null);
    SymmetricPattern equal =
        new SymmetricPattern(
            pattern.size(), pattern.columnStart().clone(), pattern.rowIndex().clone());
    assertSame(first, SymbolicFactor.of(equal, first));
  }

  /** As many unknowns, one entry moved. */
  @Test
  void otherPatternsHaveTheirOwn() {
    int[] start = {0, 2, 3, 4};
    SymmetricPattern pattern = new SymmetricPattern(3, start, new int[] {0, 1, 1, 2});
    SymbolicFactor one = SymbolicFactor.of(pattern, null);
    SymmetricPattern other = new SymmetricPattern(3, start, new int[] {0, 2, 1, 2});
    assertNotSame(one, SymbolicFactor.of(other, one));
    SymmetricPattern larger = matrix(12).pattern();
    assertEquals(larger.size(), SymbolicFactor.of(larger, one).layout().size());
  }

  /** Two solvers on one analysis keep numbers of their own. */
  @Test
  void solversThatShareDoNotDisturbEachOther() {
    SymmetricMatrix matrix = matrix(12);
    SupernodalSolver first = new SupernodalSolver(matrix.pattern(), null);
    double[] x = solution(first, matrix);
    SymmetricMatrix doubled = matrix(12);
    for (int i = 0; i < doubled.values().length; i++) {
      doubled.values()[i] *= 2;
    }
    double[] half = solution(new SupernodalSolver(doubled.pattern(), first.symbolic()), doubled);
    double[] again = new double[x.length];
    double[] b = new double[x.length];
    Arrays.setAll(b, i -> Math.sin(i));
    first.solve(b, again);
    assertArrayEquals(x, again);
    assertEquals(x[7] / 2, half[7], 1e-15 * Math.abs(x[7]));
  }
}
