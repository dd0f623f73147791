package auricle.numerics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.numerics.GridMatrix.Coupling;
import auricle.numerics.GridMatrix.Numbering;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class FillReducingOrderingTest {
  /** Fill of an established C library on grids of the same kind: see the file's header. */
  @ParameterizedTest
  @CsvFileSource(resources = "fill-of-reference-orderings.csv", numLinesToSkip = 1)
  void fillIsNearThatOfEstablishedOrderings(
      int nodesX, int nodesY, Coupling coupling, long referenceFill) {
    EliminationTree tree = FillReducingOrdering.best(graph(nodesX, nodesY, coupling));
    assertTrue(tree.fill() <= 1.15 * referenceFill, tree.fill() + " against " + referenceFill);
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "1, 2", "7, 9", "2, 400", "40, 60"})
  void bothOrdersArePermutations(int nodesX, int nodesY) {
    WeightedGraph graph = graph(nodesX, nodesY, Coupling.HINGE);
    assertPermutation(MinimumDegree.order(graph, graph.size()), graph.size());
    assertPermutation(NestedDissection.order(graph), graph.size());
  }

  @Test
  void disconnectedAndIsolatedNodesAreOrdered() {
    int n = 5000;
    int[] start = new int[n + 1];
    int[] rows = new int[n];
    Arrays.setAll(start, j -> j);
    Arrays.setAll(rows, j -> j);
    WeightedGraph graph = new UnknownGroups(new SymmetricPattern(n, start, rows)).graph();
    assertPermutation(NestedDissection.order(graph), n);
    assertPermutation(MinimumDegree.order(graph, n), n);
    assertEquals(n, FillReducingOrdering.best(graph).fill());
  }

  @Test
  void aRowCoupledToEverythingComesLast() {
    int n = 3000;
    int[] start = new int[n + 1];
    IntList rows = new IntList();
    for (int j = 0; j < n; j++) {
      rows.add(j);
      int next = j == 0 ? 1 : n;
      for (int i = next; i < n; i++) {
        rows.add(i);
      }
      start[j + 1] = rows.size();
    }
    WeightedGraph graph = new UnknownGroups(new SymmetricPattern(n, start, rows.toArray())).graph();
    assertEquals(2L * n - 1, FillReducingOrdering.best(graph).fill());
  }

  @Test
  void theThreeUnknownsOfANodeFormOneGroup() {
    SymmetricMatrix matrix = GridMatrix.definite(8, 9, Coupling.HINGE, Numbering.THREE_TOGETHER, 7);
    UnknownGroups groups = new UnknownGroups(matrix.pattern());
    assertEquals(72, groups.graph().size());
    for (int g = 0; g < 72; g++) {
      assertEquals(3, groups.count(g));
      assertEquals(groups.member(g, 0) + 2, groups.member(g, 2));
    }
  }

  @Test
  void ordersAreTheSameEveryTime() {
    WeightedGraph graph = graph(40, 60, Coupling.HINGE);
    assertArrayEquals(NestedDissection.order(graph), NestedDissection.order(graph));
    assertArrayEquals(
        MinimumDegree.order(graph, graph.size()), MinimumDegree.order(graph, graph.size()));
  }

  private static WeightedGraph graph(int nodesX, int nodesY, Coupling coupling) {
    SymmetricMatrix matrix =
        GridMatrix.definite(nodesX, nodesY, coupling, Numbering.THREE_TOGETHER, 7);
    return new UnknownGroups(matrix.pattern()).graph();
  }

  private static void assertPermutation(int[] order, int n) {
    int[] sorted = order.clone();
    Arrays.sort(sorted);
    int[] identity = new int[n];
    Arrays.setAll(identity, i -> i);
    assertArrayEquals(identity, sorted);
  }
}
