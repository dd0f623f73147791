package auricle.numerics;

import java.util.Arrays;

/**
 * The pattern of a sum of dense little matrices, and where each of their entries goes.
 *
 * <p>Clique i is a list of unknowns; places that are eliminated are -1.
 */
public final class CliquePattern {
  private final SymmetricPattern pattern;
  private final int[][] cliques;
  private final int[] offset;
  private final int[] slots;

  /**
   * @param size number of unknowns n
   * @param cliques unknowns of each clique, each at most once, -1 for none
   */
  public CliquePattern(int size, int[][] cliques) {
    this.cliques = cliques;
    offset = CliqueSlots.offsets(cliques);
    slots = new int[offset[cliques.length]];
    Arrays.fill(slots, -1);
    int[] start = new int[size + 1];
    int[] owner = owners(size, cliques, start);
    int[] columnStart = new int[size + 1];
    IntList rows = new IntList();
    int[] place = new int[size];
    Arrays.fill(place, -1);
    for (int j = 0; j < size; j++) {
      columnStart[j] = rows.size();
      addColumn(j, cliques, owner, start, rows, place);
    }
    columnStart[size] = rows.size();
    pattern = new SymmetricPattern(size, columnStart, rows.toArray());
  }

  /** For each unknown the cliques it is in; fills their offsets. */
  private static int[] owners(int size, int[][] cliques, int[] start) {
    for (int[] clique : cliques) {
      for (int j : clique) {
        if (j >= 0) {
          start[j + 1]++;
        }
      }
    }
    for (int j = 0; j < size; j++) {
      start[j + 1] += start[j];
    }
    int[] fill = start.clone();
    int[] owner = new int[start[size]];
    for (int i = 0; i < cliques.length; i++) {
      for (int j : cliques[i]) {
        if (j >= 0) {
          owner[fill[j]++] = i;
        }
      }
    }
    return owner;
  }

  private void addColumn(
      int j, int[][] cliques, int[] owner, int[] start, IntList rows, int[] place) {
    int first = rows.size();
    int[] column = column(j, cliques, owner, start, place);
    for (int k = 0; k < column.length; k++) {
      rows.add(column[k]);
      place[column[k]] = first + k;
    }
    for (int o = start[j]; o < start[j + 1]; o++) {
      assign(owner[o], cliques[owner[o]], j, place);
    }
    for (int row : column) {
      place[row] = -1;
    }
  }

  /** Rows of column j from j on, ascending; {@code place} is all -1 before and -2 at them after. */
  private static int[] column(int j, int[][] cliques, int[] owner, int[] start, int[] place) {
    IntList found = new IntList();
    found.add(j);
    place[j] = -2;
    for (int o = start[j]; o < start[j + 1]; o++) {
      for (int row : cliques[owner[o]]) {
        if (row > j && place[row] == -1) {
          place[row] = -2;
          found.add(row);
        }
      }
    }
    int[] column = found.toArray();
    Arrays.sort(column);
    return column;
  }

  private void assign(int i, int[] clique, int j, int[] place) {
    int local = 0;
    while (clique[local] != j) {
      local++;
    }
    for (int other = 0; other < clique.length; other++) {
      if (clique[other] >= j) {
        int a = Math.max(local, other);
        slots[offset[i] + a * (a + 1) / 2 + Math.min(local, other)] = place[clique[other]];
      }
    }
  }

  /** The pattern of the sum; every diagonal entry is in it. */
  public SymmetricPattern pattern() {
    return pattern;
  }

  /** Where the entries of some of the cliques go, from one up to another that is left out. */
  public CliqueSlots slots(int from, int to) {
    return new CliqueSlots(
        Arrays.copyOfRange(cliques, from, to), Arrays.copyOfRange(slots, offset[from], offset[to]));
  }
}
