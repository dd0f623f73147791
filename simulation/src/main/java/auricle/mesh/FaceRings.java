package auricle.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;

/** Triangles about a vertex, ring by ring, without stepping over a crease. */
final class FaceRings {
  private final Topology topology;
  private final boolean[] crease;

  /** Triangles of vertex v: {@code triangles[start[v] … start[v + 1])}. */
  private final int[] start;

  private final int[] triangles;

  FaceRings(double[] x, Topology topology, double creaseAngle) {
    this.topology = topology;
    this.start = new int[topology.vertexCount() + 1];
    int corners = 3 * topology.triangleCount();
    for (int c = 0; c < corners; c++) {
      start[topology.vertex(c / 3, c % 3) + 1]++;
    }
    for (int v = 0; v < topology.vertexCount(); v++) {
      start[v + 1] += start[v];
    }
    this.triangles = new int[corners];
    int[] next = Arrays.copyOf(start, topology.vertexCount());
    for (int c = 0; c < corners; c++) {
      triangles[next[topology.vertex(c / 3, c % 3)]++] = c / 3;
    }
    this.crease = new boolean[topology.edgeCount()];
    for (int e = 0; e < crease.length; e++) {
      crease[e] = Creases.turn(x, topology, e) > creaseAngle;
    }
  }

  /** The triangles at a vertex, in groups that hang together without a crease. */
  List<List<Integer>> sides(int v) {
    Groups groups = new Groups(start[v + 1] - start[v]);
    for (int i = start[v]; i < start[v + 1]; i++) {
      for (int j = start[v]; j < i; j++) {
        if (joined(triangles[i], triangles[j])) {
          groups.join(i - start[v], j - start[v]);
        }
      }
    }
    TreeMap<Integer, List<Integer>> sides = new TreeMap<>();
    for (int i = start[v]; i < start[v + 1]; i++) {
      sides.computeIfAbsent(groups.find(i - start[v]), k -> new ArrayList<>()).add(triangles[i]);
    }
    return List.copyOf(sides.values());
  }

  private boolean joined(int t, int other) {
    for (int c = 0; c < 3; c++) {
      if (across(t, c) == other) {
        return true;
      }
    }
    return false;
  }

  /** The triangle over an edge that is no crease, or -1. */
  private int across(int t, int corner) {
    int e = topology.edge(t, corner);
    int left = topology.leftTriangle(e);
    return crease[e] ? -1 : left == t ? topology.rightTriangle(e) : left;
  }

  /** A set of triangles with those that touch one of its vertices and can be walked to. */
  List<Integer> grown(Collection<Integer> set) {
    Set<Integer> ring = vertices(set);
    Set<Integer> reached = new LinkedHashSet<>(set);
    List<Integer> open = new ArrayList<>(reached);
    while (!open.isEmpty()) {
      int t = open.remove(open.size() - 1);
      for (int c = 0; c < 3; c++) {
        int other = across(t, c);
        if (other >= 0 && touches(other, ring) && reached.add(other)) {
          open.add(other);
        }
      }
    }
    return List.copyOf(reached);
  }

  private boolean touches(int t, Set<Integer> vertices) {
    return vertices.contains(topology.vertex(t, 0))
        || vertices.contains(topology.vertex(t, 1))
        || vertices.contains(topology.vertex(t, 2));
  }

  /** Vertices of some triangles, in the order in which they name them. */
  Set<Integer> vertices(Collection<Integer> set) {
    Set<Integer> found = new LinkedHashSet<>();
    for (int t : set) {
      for (int c = 0; c < 3; c++) {
        found.add(topology.vertex(t, c));
      }
    }
    return found;
  }
}
