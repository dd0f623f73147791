package auricle.energy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The pairs of a vertex and a face, edge or corner of a surface, weighted so that together they
 * count the surface once.
 *
 * <p>Over a smooth patch every face around an edge is as near as the edge itself once the closest
 * point lies on it; summing over faces alone would count it twice there and six times at a corner.
 * So faces count +1, edges between two of the faces −1, and corners 1 − faces + such edges (+1
 * inside a patch, 0 on its rim): the Euler characteristic of what is closest, which is one. After
 * the inclusion–exclusion of Li, Ferguson et al. 2023, "Convergent incremental potential contact"
 * (preprint; from memory).
 */
final class ContactPairs {
  private final List<Pair> pairs = new ArrayList<>();

  /**
   * @param vertex index of the vertex
   * @param place index of the vertex in the contact's own list
   * @param corners one to three corners of the surface
   * @param weight +1 or −1, rarely another whole number
   */
  record Pair(int vertex, int place, List<Integer> corners, int weight) {
    int[] cornerArray() {
      return corners.stream().mapToInt(Integer::intValue).toArray();
    }
  }

  /** Adds one vertex with the faces that are near it, ascending. */
  void add(int vertex, int place, List<int[]> faces) {
    Map<List<Integer>, Integer> edges = new TreeMap<>(ContactPairs::order);
    Map<Integer, Integer> corners = new TreeMap<>();
    for (int[] face : faces) {
      pairs.add(new Pair(vertex, place, List.of(face[0], face[1], face[2]), 1));
      for (int k = 0; k < 3; k++) {
        int a = face[k];
        int b = face[(k + 1) % 3];
        edges.merge(List.of(Math.min(a, b), Math.max(a, b)), 1, Integer::sum);
        corners.merge(a, -1, Integer::sum);
      }
    }
    edges.forEach(
        (edge, count) -> {
          if (count > 1) {
            pairs.add(new Pair(vertex, place, edge, 1 - count));
            edge.forEach(v -> corners.merge(v, count - 1, Integer::sum));
          }
        });
    corners.forEach(
        (corner, sum) -> {
          if (sum != -1) {
            pairs.add(new Pair(vertex, place, List.of(corner), 1 + sum));
          }
        });
  }

  private static int order(List<Integer> a, List<Integer> b) {
    int first = Integer.compare(a.get(0), b.get(0));
    return first != 0 ? first : Integer.compare(a.get(1), b.get(1));
  }

  List<Pair> pairs() {
    return pairs;
  }

  /** The unknowns of every pair: the vertex, then the corners if they move. */
  static int[][] stencils(List<Pair> pairs, ContactSurface surface) {
    return pairs.stream()
        .map(pair -> stencil(pair.vertex(), pair.cornerArray(), surface))
        .toArray(int[][]::new);
  }

  /** The unknowns of one. */
  static int[] stencil(int vertex, int[] corners, ContactSurface surface) {
    int moving = surface.moves() ? corners.length : 0;
    int[] stencil = new int[3 * (moving + 1)];
    for (int c = 0; c < 3; c++) {
      stencil[c] = 3 * vertex + c;
      for (int k = 0; k < moving; k++) {
        stencil[3 * (k + 1) + c] = 3 * corners[k] + c;
      }
    }
    return stencil;
  }
}
