package auricle.viewer.scene;

/** The faces of an ear's mesh, nine numbers each: point, normal, texture place of three corners. */
final class EarFaces {
  private final int[] faces;
  private final boolean mirrored;
  private int next;

  EarFaces(EarSurface surface, Rim rim, boolean mirrored) {
    this.mirrored = mirrored;
    int n = surface.vertexCount();
    int[] t = surface.triangles();
    this.faces = new int[9 * (2 * surface.triangleCount() + 4 * rim.edgeCount())];
    for (int i = 0; i < t.length; i += 3) {
      add(t[i], t[i + 1], t[i + 2]);
    }
    for (int i = 0; i < t.length; i += 3) {
      add(n + t[i + 2], n + t[i + 1], n + t[i]);
    }
    for (int e = 0; e < rim.edgeCount(); e++) {
      int a = rim.end(e, 0);
      int b = rim.end(e, 1);
      int ra = 2 * n + rim.place(a);
      int rb = 2 * n + rim.place(b);
      add(b, a, ra);
      add(b, ra, rb);
      add(rb, ra, n + a);
      add(rb, n + a, n + b);
    }
  }

  int[] faces() {
    return faces;
  }

  private void add(int a, int b, int c) {
    corner(a);
    corner(mirrored ? c : b);
    corner(mirrored ? b : c);
  }

  private void corner(int vertex) {
    faces[next++] = vertex;
    faces[next++] = vertex;
    faces[next++] = vertex;
  }
}
