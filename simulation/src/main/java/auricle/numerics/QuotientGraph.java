package auricle.numerics;

import java.util.Arrays;

/**
 * The graph of a partly eliminated matrix: a live variable is adjacent to variables directly, or
 * through elements (eliminated pivots) whose members it is. Storage never grows beyond that of the
 * original graph by more than one element a variable.
 */
final class QuotientGraph {
  private static final int[] NONE = {};

  private final int[] weight;
  private final int[][] variables;
  private final int[] variableCount;
  private final int[][] elements;
  private final int[] elementCount;
  private final int[][] members;
  private final int[] memberWeight;
  private final int[] outside;
  private final int[] outsideStamp;
  private final int[] mark;
  private final int[] nextMerged;
  private final int[] lastMerged;
  private final int[] eliminatedWeight;
  private int stamp;
  private int elementStamp;

  QuotientGraph(WeightedGraph source) {
    int n = source.size();
    weight = source.weight.clone();
    variables = new int[n][];
    variableCount = new int[n];
    elements = new int[n][4];
    elementCount = new int[n];
    members = new int[n][];
    memberWeight = new int[n];
    outside = new int[n];
    outsideStamp = new int[n];
    mark = new int[n];
    nextMerged = new int[n];
    lastMerged = new int[n];
    eliminatedWeight = new int[n];
    for (int v = 0; v < n; v++) {
      variables[v] = Arrays.copyOfRange(source.neighbour, source.start[v], source.start[v + 1]);
      variableCount[v] = variables[v].length;
      members[v] = NONE;
      nextMerged[v] = -1;
      lastMerged[v] = v;
    }
  }

  boolean alive(int v) {
    return weight[v] > 0;
  }

  int weight(int v) {
    return weight[v];
  }

  /** Forgets v, which is ordered elsewhere. */
  void drop(int v) {
    weight[v] = 0;
  }

  int[] members(int element) {
    return members[element];
  }

  /** Weight of the pivot with all that was eliminated along with it. */
  int eliminatedWeight(int p) {
    return eliminatedWeight[p];
  }

  /** Turns variable p into an element that absorbs the elements p belonged to. */
  void formElement(int p) {
    stamp++;
    elementStamp = stamp;
    mark[p] = stamp;
    eliminatedWeight[p] = weight[p];
    weight[p] = 0;
    int[] list = new int[boundOfMembers(p)];
    int count = collect(variables[p], variableCount[p], list, 0);
    for (int k = 0; k < elementCount[p]; k++) {
      int e = elements[p][k];
      count = collect(members[e], members[e].length, list, count);
      members[e] = NONE;
      memberWeight[e] = 0;
    }
    members[p] = Arrays.copyOf(list, count);
    variables[p] = NONE;
    elements[p] = NONE;
    for (int i : members[p]) {
      memberWeight[p] += weight[i];
      measureOutside(i);
    }
  }

  private int boundOfMembers(int p) {
    int bound = variableCount[p];
    for (int k = 0; k < elementCount[p]; k++) {
      bound += members[elements[p][k]].length;
    }
    return bound;
  }

  private int collect(int[] from, int length, int[] list, int count) {
    for (int k = 0; k < length; k++) {
      int v = from[k];
      if (weight[v] > 0 && mark[v] != stamp) {
        mark[v] = stamp;
        list[count++] = v;
      }
    }
    return count;
  }

  /**
   * After this ran for all members i of the new element, outside[e] is the weight of e beyond it.
   */
  private void measureOutside(int i) {
    for (int k = 0; k < elementCount[i]; k++) {
      int e = elements[i][k];
      if (outsideStamp[e] != stamp) {
        outsideStamp[e] = stamp;
        outside[e] = memberWeight[e];
      }
      outside[e] -= weight[i];
    }
  }

  /**
   * Prunes the lists of i, a member of the new element p, and returns the weight adjacent to i
   * outside of p, counted twice where elements overlap (the approximate degree). A variable left
   * with p alone is eliminated along with it if it may be.
   */
  int update(int i, int p, boolean mayEliminate) {
    int degree = pruneElements(i, p) + pruneVariables(i);
    if (mayEliminate && variableCount[i] == 0 && elementCount[i] == 1) {
      eliminatedWeight[p] += weight[i];
      absorb(i, p);
    }
    return degree;
  }

  /** Drops elements that lie within p from the list of i and adds p; weight of the others. */
  private int pruneElements(int i, int p) {
    int beyond = 0;
    int kept = 0;
    for (int k = 0; k < elementCount[i]; k++) {
      int e = elements[i][k];
      if (memberWeight[e] > 0 && outside[e] > 0) {
        beyond += outside[e];
        elements[i][kept++] = e;
      }
    }
    if (kept == elements[i].length) {
      elements[i] = Arrays.copyOf(elements[i], 2 * kept);
    }
    elements[i][kept++] = p;
    elementCount[i] = kept;
    return beyond;
  }

  /** Drops variables that are dead or reached through the new element; weight of the others. */
  private int pruneVariables(int i) {
    int beyond = 0;
    int kept = 0;
    for (int k = 0; k < variableCount[i]; k++) {
      int v = variables[i][k];
      if (weight[v] > 0 && mark[v] != elementStamp) {
        beyond += weight[v];
        variables[i][kept++] = v;
      }
    }
    variableCount[i] = kept;
    return beyond;
  }

  /** Removes dead members of p and returns the weight of those left. */
  int sealElement(int p) {
    int kept = 0;
    int sum = 0;
    for (int i : members[p]) {
      if (weight[i] > 0) {
        members[p][kept++] = i;
        sum += weight[i];
      }
    }
    members[p] = Arrays.copyOf(members[p], kept);
    memberWeight[p] = sum;
    return sum;
  }

  /** Hash of the lists of i, alike for indistinguishable variables. */
  int hash(int i) {
    int sum = 0;
    for (int k = 0; k < elementCount[i]; k++) {
      sum += elements[i][k];
    }
    for (int k = 0; k < variableCount[i]; k++) {
      sum += variables[i][k];
    }
    return sum & Integer.MAX_VALUE;
  }

  void markLists(int i) {
    stamp++;
    for (int k = 0; k < elementCount[i]; k++) {
      mark[elements[i][k]] = stamp;
    }
    for (int k = 0; k < variableCount[i]; k++) {
      mark[variables[i][k]] = stamp;
    }
  }

  /** Whether j has the same lists as i, which were marked. */
  boolean listsMatch(int i, int j) {
    if (elementCount[i] != elementCount[j] || variableCount[i] != variableCount[j]) {
      return false;
    }
    for (int k = 0; k < elementCount[j]; k++) {
      if (mark[elements[j][k]] != stamp) {
        return false;
      }
    }
    for (int k = 0; k < variableCount[j]; k++) {
      if (mark[variables[j][k]] != stamp) {
        return false;
      }
    }
    return true;
  }

  /** Makes j part of the live variable i. */
  void merge(int j, int i) {
    weight[i] += weight[j];
    absorb(j, i);
  }

  private void absorb(int j, int into) {
    weight[j] = 0;
    nextMerged[lastMerged[into]] = j;
    lastMerged[into] = lastMerged[j];
    variables[j] = NONE;
    elements[j] = NONE;
    variableCount[j] = 0;
    elementCount[j] = 0;
  }

  /** Writes p and all variables merged into it to order from {@code count} on; the new count. */
  int listMerged(int p, int[] order, int count) {
    int c = count;
    for (int v = p; v >= 0; v = nextMerged[v]) {
      order[c++] = v;
    }
    return c;
  }
}
