package auricle.numerics;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Unknowns that are coupled to exactly the same unknowns (the components at one vertex, say),
 * merged into groups: the ordering and the symbolic factorisation then work on one weighted node a
 * group. Such unknowns are "indistinguishable" and can be eliminated side by side without loss
 * (George and Liu 1981, Computer Solution of Large Sparse Positive Definite Systems, section 5.3).
 */
final class UnknownGroups {
  private final int[] groupOf;
  private final int[] memberStart;
  private final int[] member;
  private final WeightedGraph graph;

  UnknownGroups(SymmetricPattern pattern) {
    Adjacency full = new Adjacency(pattern);
    groupOf = new int[pattern.size()];
    int[] representative = group(full, groupOf);
    int groups = representative.length;
    memberStart = new int[groups + 1];
    for (int g : groupOf) {
      memberStart[g + 1]++;
    }
    int[] weight = Arrays.copyOfRange(memberStart, 1, groups + 1);
    for (int g = 0; g < groups; g++) {
      memberStart[g + 1] += memberStart[g];
    }
    member = new int[groupOf.length];
    int[] fill = memberStart.clone();
    for (int i = 0; i < groupOf.length; i++) {
      member[fill[groupOf[i]]++] = i;
    }
    graph = quotient(full, representative, weight);
  }

  /** One node a group; its weight is the number of unknowns in the group. */
  WeightedGraph graph() {
    return graph;
  }

  /** Number of unknowns in all groups. */
  int unknowns() {
    return groupOf.length;
  }

  /** Number of unknowns in group g. */
  int count(int g) {
    return memberStart[g + 1] - memberStart[g];
  }

  /** The k-th unknown of group g, ascending in k. */
  int member(int g, int k) {
    return member[memberStart[g] + k];
  }

  private static int[] group(Adjacency full, int[] groupOf) {
    Map<Long, Integer> newest = new HashMap<>();
    int n = groupOf.length;
    int[] representative = new int[n];
    int[] sameHash = new int[n];
    int[] mark = new int[n];
    Arrays.fill(mark, -1);
    int groups = 0;
    for (int i = 0; i < n; i++) {
      long hash = full.hash(i);
      int candidate = newest.getOrDefault(hash, -1);
      full.mark(i, mark, i);
      while (candidate >= 0 && !full.allMarked(representative[candidate], i, mark, i)) {
        candidate = sameHash[candidate];
      }
      if (candidate < 0) {
        candidate = groups++;
        representative[candidate] = i;
        Integer older = newest.put(hash, candidate);
        sameHash[candidate] = older == null ? -1 : older;
      }
      groupOf[i] = candidate;
    }
    return Arrays.copyOf(representative, groups);
  }

  private WeightedGraph quotient(Adjacency full, int[] representative, int[] weight) {
    int groups = representative.length;
    int[] start = new int[groups + 1];
    int edges = 0;
    for (int r : representative) {
      edges += full.start[r + 1] - full.start[r];
    }
    int[] neighbour = new int[edges];
    int[] seen = new int[groups];
    Arrays.fill(seen, -1);
    int count = 0;
    for (int g = 0; g < groups; g++) {
      seen[g] = g;
      int r = representative[g];
      for (int p = full.start[r]; p < full.start[r + 1]; p++) {
        int other = groupOf[full.neighbour[p]];
        if (seen[other] != g) {
          seen[other] = g;
          neighbour[count++] = other;
        }
      }
      start[g + 1] = count;
    }
    int[] ones = new int[count];
    Arrays.fill(ones, 1);
    return new WeightedGraph(start, Arrays.copyOf(neighbour, count), ones, weight);
  }
}
