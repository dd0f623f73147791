package auricle.mesh;

import auricle.diagnostics.Findings;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Faults in how triangles join: edges, orientation, pinched vertices, pieces. */
final class JoinCheck {
  private final RawMesh raw;
  private final Triangulation mesh;
  private final String where;
  private final Findings findings;

  /** For each pair of vertices the corners that lie opposite the edge between them. */
  private final Map<Long, List<Integer>> edges = new LinkedHashMap<>();

  JoinCheck(RawMesh raw, Triangulation mesh, String where, Findings findings) {
    this.raw = raw;
    this.mesh = mesh;
    this.where = where;
    this.findings = findings;
    for (int corner = 0; corner < 3 * mesh.count(); corner++) {
      long from = from(corner);
      long to = to(corner);
      if (from == to || isRepeated(corner)) {
        continue; // a triangle of two vertices is told as degenerate and joins nothing
      }
      long key = Math.min(from, to) * raw.vertexCount() + Math.max(from, to);
      edges.computeIfAbsent(key, k -> new ArrayList<>(2)).add(corner);
    }
  }

  /** Looks for all of them. */
  void run() {
    edges();
    pinchedVertices();
    pieces();
  }

  private int from(int corner) {
    return mesh.vertex(corner / 3, (corner + 1) % 3);
  }

  private int to(int corner) {
    return mesh.vertex(corner / 3, (corner + 2) % 3);
  }

  private boolean isRepeated(int corner) {
    int v = mesh.vertex(corner / 3, corner % 3);
    return v == from(corner) || v == to(corner);
  }

  private void edges() {
    Offenders crowded = new Offenders();
    Offenders turned = new Offenders();
    for (List<Integer> corners : edges.values()) {
      if (corners.size() > 2) {
        crowded.add(edge(corners));
      } else if (corners.size() == 2 && from(corners.get(0)) == from(corners.get(1))) {
        turned.add(edge(corners));
      }
    }
    crowded.error(
        findings,
        where,
        "non-manifold edges",
        "one or two faces on every edge",
        "Remove inner or doubled faces, or split the mesh into shells.");
    turned.error(
        findings,
        where,
        "edges whose two faces are oriented against each other",
        "all faces anticlockwise seen from the same side",
        "Orient the faces consistently; a one-sided (Möbius) surface cannot be used.");
  }

  private String edge(List<Integer> corners) {
    int c = corners.get(0);
    String faces =
        corners.stream()
            .limit(4)
            .map(k -> String.valueOf(raw.number(mesh.face(k / 3))))
            .collect(Collectors.joining(", "));
    return "edge " + raw.number(from(c)) + "-" + raw.number(to(c)) + " of faces " + faces;
  }

  /** A vertex whose triangles do not all hang together by edges at that vertex. */
  private void pinchedVertices() {
    Groups fans = new Groups(3 * mesh.count());
    for (List<Integer> corners : edges.values()) {
      for (int c : corners) {
        joinAt(fans, corners.get(0), c, from(c));
        joinAt(fans, corners.get(0), c, to(c));
      }
    }
    int[] fan = new int[raw.vertexCount()];
    Arrays.fill(fan, -1);
    Set<Integer> pinched = new LinkedHashSet<>();
    for (int corner = 0; corner < 3 * mesh.count(); corner++) {
      int v = mesh.vertex(corner / 3, corner % 3);
      if (fan[v] >= 0 && fan[v] != fans.find(corner)) {
        pinched.add(v);
      }
      fan[v] = fans.find(corner);
    }
    Offenders offenders = new Offenders();
    pinched.forEach(v -> offenders.add(FaceCheck.vertex(raw, v)));
    offenders.error(
        findings,
        where,
        "pinched vertices (groups of faces that meet in that point alone)",
        "the faces around a vertex joined by edges",
        "Give each group a vertex of its own or fill the gap.");
  }

  private void joinAt(Groups fans, int first, int second, int vertex) {
    fans.join(cornerAt(first / 3, vertex), cornerAt(second / 3, vertex));
  }

  private int cornerAt(int triangle, int vertex) {
    int c = 0;
    while (c < 2 && mesh.vertex(triangle, c) != vertex) {
      c++;
    }
    return 3 * triangle + c;
  }

  private void pieces() {
    Groups joined = new Groups(raw.vertexCount());
    for (int t = 0; t < mesh.count(); t++) {
      joined.join(mesh.vertex(t, 0), mesh.vertex(t, 1));
      joined.join(mesh.vertex(t, 0), mesh.vertex(t, 2));
    }
    Map<Integer, int[]> pieces = new LinkedHashMap<>();
    for (int t = 0; t < mesh.count(); t++) {
      int triangle = t;
      pieces.computeIfAbsent(joined.find(mesh.vertex(t, 0)), k -> new int[] {triangle, 0})[1]++;
    }
    if (pieces.size() > 1) {
      Offenders offenders = new Offenders();
      pieces.values().forEach(p -> offenders.add(mesh.name(p[0]) + " with " + p[1] + " in all"));
      offenders.error(
          findings, where, "pieces that do not touch", "one piece", pieceRemedy(joined));
    }
  }

  private String pieceRemedy(Groups joined) {
    Map<String, Integer> places = new LinkedHashMap<>();
    boolean[] used = new boolean[raw.vertexCount()];
    for (int c = 0; c < 3 * mesh.count(); c++) {
      used[mesh.vertex(c / 3, c % 3)] = true;
    }
    int shared = 0;
    for (int v = 0; v < raw.vertexCount(); v++) {
      if (used[v]) {
        String place = raw.position(v, 0) + " " + raw.position(v, 1) + " " + raw.position(v, 2);
        Integer other = places.putIfAbsent(place, joined.find(v));
        shared += other != null && other != joined.find(v) ? 1 : 0;
      }
    }
    return shared > 0
        ? shared + " vertices of different pieces lie in the same place: merge them."
        : "Keep one piece in the file.";
  }
}
