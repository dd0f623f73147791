package auricle.numerics;

import java.util.Arrays;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Random matrices with the couplings of a shell on a regular grid of nodes, every square cut into
 * two triangles along the same diagonal, nodes renumbered at random.
 */
final class GridMatrix {
  /** Which nodes share an entry. */
  enum Coupling {
    /** Nodes of a triangle and those opposite across an edge: 12 neighbours. */
    HINGE(new int[][] {{1, 0}, {0, 1}, {1, 1}, {2, 1}, {1, 2}, {1, -1}}),
    /** All nodes within two edges: 18 neighbours. */
    RING2(new int[][] {{1, 0}, {0, 1}, {1, 1}, {2, 1}, {1, 2}, {1, -1}, {2, 0}, {0, 2}, {2, 2}});

    private final int[][] half;

    Coupling(int[][] half) {
      this.half = half;
    }
  }

  /** How the unknowns of a node are numbered. */
  enum Numbering {
    /** Three a node, together. */
    THREE_TOGETHER,
    /** Five a node: three of every node first, then two of every node. */
    THREE_THEN_TWO
  }

  private final int nodesX;
  private final int nodesY;
  private final Coupling coupling;
  private final Numbering numbering;
  private final UniformRandomProvider random;

  private GridMatrix(int nodesX, int nodesY, Coupling coupling, Numbering numbering, long seed) {
    this.nodesX = nodesX;
    this.nodesY = nodesY;
    this.coupling = coupling;
    this.numbering = numbering;
    random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
  }

  /** A diagonally dominant, positive definite matrix. */
  static SymmetricMatrix definite(
      int nodesX, int nodesY, Coupling coupling, Numbering numbering, long seed) {
    return new GridMatrix(nodesX, nodesY, coupling, numbering, seed).build(1);
  }

  /** The same with about half of the diagonal entries negative. */
  static SymmetricMatrix indefinite(
      int nodesX, int nodesY, Coupling coupling, Numbering numbering, long seed) {
    return new GridMatrix(nodesX, nodesY, coupling, numbering, seed).build(-1);
  }

  private SymmetricMatrix build(int otherSign) {
    SymmetricMatrix matrix = new SymmetricMatrix(pattern());
    SymmetricPattern pattern = matrix.pattern();
    double[] sum = new double[pattern.size()];
    for (int j = 0; j < pattern.size(); j++) {
      for (int p = pattern.columnStart()[j] + 1; p < pattern.columnStart()[j + 1]; p++) {
        double a = 2 * random.nextDouble() - 1;
        matrix.values()[p] = a;
        sum[j] += Math.abs(a);
        sum[pattern.rowIndex()[p]] += Math.abs(a);
      }
    }
    for (int j = 0; j < pattern.size(); j++) {
      matrix.addToDiagonal(j, (sum[j] + 0.1) * (random.nextBoolean() ? 1 : otherSign));
    }
    return matrix;
  }

  private SymmetricPattern pattern() {
    int nodes = nodesX * nodesY;
    int[] number = shuffled(nodes);
    SortedSet<Integer>[] lower = emptyColumns(nodes * perNode());
    for (int y = 0; y < nodesY; y++) {
      for (int x = 0; x < nodesX; x++) {
        couple(lower, number[x + nodesX * y], number[x + nodesX * y]);
        for (int[] step : coupling.half) {
          int ox = x + step[0];
          int oy = y + step[1];
          if (ox >= 0 && ox < nodesX && oy >= 0 && oy < nodesY) {
            couple(lower, number[x + nodesX * y], number[ox + nodesX * oy]);
          }
        }
      }
    }
    return compress(lower);
  }

  private void couple(SortedSet<Integer>[] lower, int a, int b) {
    for (int k = 0; k < perNode(); k++) {
      for (int l = 0; l < perNode(); l++) {
        int i = unknown(a, k);
        int j = unknown(b, l);
        lower[Math.min(i, j)].add(Math.max(i, j));
      }
    }
  }

  private int perNode() {
    return numbering == Numbering.THREE_TOGETHER ? 3 : 5;
  }

  private int unknown(int node, int k) {
    return k < 3 ? 3 * node + k : 3 * nodesX * nodesY + 2 * node + k - 3;
  }

  private int[] shuffled(int n) {
    int[] number = new int[n];
    for (int i = 0; i < n; i++) {
      int j = random.nextInt(i + 1);
      number[i] = number[j];
      number[j] = i;
    }
    return number;
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static SortedSet<Integer>[] emptyColumns(int n) {
    SortedSet<Integer>[] columns = new SortedSet[n];
    Arrays.setAll(columns, j -> new TreeSet<>());
    return columns;
  }

  private static SymmetricPattern compress(SortedSet<Integer>[] lower) {
    int[] start = new int[lower.length + 1];
    IntList rows = new IntList();
    for (int j = 0; j < lower.length; j++) {
      lower[j].forEach(rows::add);
      start[j + 1] = rows.size();
    }
    return new SymmetricPattern(lower.length, start, rows.toArray());
  }
}
