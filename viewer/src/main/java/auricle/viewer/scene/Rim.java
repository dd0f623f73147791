package auricle.viewer.scene;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The free edges of a surface: edges with a triangle on one side only. */
final class Rim {
  private final int[] edges;
  private final int[] vertices;
  private final Map<Integer, Integer> places = new HashMap<>();

  /** Finds the free edges of the triangles, three vertices each. */
  Rim(int[] triangles) {
    Map<Long, int[]> open = new java.util.LinkedHashMap<>();
    for (int t = 0; t < triangles.length; t += 3) {
      for (int k = 0; k < 3; k++) {
        int a = triangles[t + k];
        int b = triangles[t + (k + 1) % 3];
        long key = (long) Math.min(a, b) << 32 | Math.max(a, b);
        if (open.remove(key) == null) {
          open.put(key, new int[] {a, b});
        }
      }
    }
    List<Integer> order = new ArrayList<>();
    edges = open.values().stream().flatMapToInt(e -> java.util.Arrays.stream(e)).toArray();
    for (int v : edges) {
      if (places.putIfAbsent(v, order.size()) == null) {
        order.add(v);
      }
    }
    vertices = order.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Number of free edges. */
  int edgeCount() {
    return edges.length / 2;
  }

  /** First (0) or second (1) vertex of an edge, in the direction of its triangle. */
  int end(int edge, int which) {
    return edges[2 * edge + which];
  }

  /** Number of vertices on free edges. */
  int vertexCount() {
    return vertices.length;
  }

  /** The vertex at a place of the rim's own counting. */
  int vertex(int place) {
    return vertices[place];
  }

  /** The place of a vertex in the rim's own counting. */
  int place(int vertex) {
    return places.getOrDefault(vertex, -1);
  }

  /**
   * Unit directions out of the surface at the rim's vertices, three numbers each, in the rim's own
   * counting.
   */
  float[] outward(float[] points, float[] normals) {
    float[] out = new float[3 * vertices.length];
    for (int e = 0; e < edgeCount(); e++) {
      int a = end(e, 0);
      int b = end(e, 1);
      for (int v : new int[] {a, b}) {
        addCross(out, place(v), points, a, b, normals, v);
      }
    }
    for (int i = 0; i < vertices.length; i++) {
      Vectors.normalise(out, i);
    }
    return out;
  }

  private static void addCross(
      float[] out, int place, float[] points, int a, int b, float[] normals, int v) {
    float ex = points[3 * b] - points[3 * a];
    float ey = points[3 * b + 1] - points[3 * a + 1];
    float ez = points[3 * b + 2] - points[3 * a + 2];
    float nx = normals[3 * v];
    float ny = normals[3 * v + 1];
    float nz = normals[3 * v + 2];
    out[3 * place] += ey * nz - ez * ny;
    out[3 * place + 1] += ez * nx - ex * nz;
    out[3 * place + 2] += ex * ny - ey * nx;
  }
}
