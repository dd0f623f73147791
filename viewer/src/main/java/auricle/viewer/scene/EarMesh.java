package auricle.viewer.scene;

import java.util.List;
import java.util.Optional;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import javafx.scene.shape.VertexFormat;

/**
 * The mesh of an ear: visible face, posterior face with reversed triangles, and a rounded rim
 * between them. One {@link TriangleMesh} for as long as its triangles are the same, changed in
 * place. Other triangles are a new one: JavaFX (21) keeps the number of vertices of the first
 * change in place for good, and when a mesh that grew since is changed in place again, the window
 * is black.
 *
 * <p>Points, normals and texture places stand in the same order: the vertices of the visible face,
 * those of the posterior face, then one a vertex of the rim. A texture place is the number that is
 * coloured, then the light of the lamps that are no lamps of the scene.
 */
public final class EarMesh {
  /** Skin and cartilage together are drawn no thinner than this, so that a rim looks like one. */
  private static final float THINNEST_MM = 1.6f;

  private final MeshView node = new MeshView();
  private TriangleMesh mesh = new TriangleMesh(VertexFormat.POINT_NORMAL_TEXCOORD);
  private Optional<EarSurface> shown = Optional.empty();
  private Rim rim = new Rim(new int[0]);
  private final float thinnest;
  private final List<Lamp> lamps;
  private float[] texture = new float[0];
  private boolean mirrored;

  /** An ear drawn with a wall that can be seen. */
  public EarMesh() {
    this(List.of());
  }

  /**
   * The same.
   *
   * @param lamps whose light on it is read from a {@link Glow}
   */
  EarMesh(List<Lamp> lamps) {
    this(THINNEST_MM, lamps);
  }

  /**
   * @param thinnest_mm the wall is drawn no thinner than this
   */
  EarMesh(float thinnest_mm, List<Lamp> lamps) {
    this.thinnest = thinnest_mm;
    this.lamps = lamps;
    node.setMesh(mesh);
  }

  /** What is put into a scene. */
  public MeshView node() {
    return node;
  }

  /** The mesh of the surface drawn last. */
  public TriangleMesh mesh() {
    return mesh;
  }

  /** The surface drawn last. */
  public Optional<EarSurface> shown() {
    return shown;
  }

  /** Whether a left ear is drawn. */
  public boolean mirrored() {
    return mirrored;
  }

  /** The surface's triangle under a picked face of the mesh. */
  public int triangle(int face) {
    int count = shown.map(EarSurface::triangleCount).orElse(0);
    return face < 2 * count ? face % Math.max(1, count) : -1;
  }

  /** Whether a picked face is on the posterior side. */
  public boolean posterior(int face) {
    int count = shown.map(EarSurface::triangleCount).orElse(0);
    return face >= count && face < 2 * count;
  }

  /** Draws a surface; its triangles are laid anew only if they differ from those before. */
  public void show(EarSurface surface, boolean left) {
    boolean same = left == mirrored && shown.map(surface::sameTriangles).orElse(false);
    if (!same) {
      rim = new Rim(surface.triangles());
      mesh = new TriangleMesh(VertexFormat.POINT_NORMAL_TEXCOORD);
    }
    mirrored = left;
    shown = Optional.of(surface);
    if (!same) {
      texture = new float[2 * (2 * surface.vertexCount() + rim.vertexCount())];
      java.util.Arrays.fill(texture, 0.5f);
    }
    place(surface);
    if (!same) {
      mesh.getFaces().setAll(new EarFaces(surface, rim, left).faces());
      node.setMesh(mesh);
    }
  }

  /** Colours by a number from 0 to 1 at each vertex of either face. */
  public void colour(float[] visible, float[] posterior) {
    int n = visible.length;
    for (int i = 0; 2 * i < texture.length; i++) {
      float u = i < n ? visible[i] : i < 2 * n ? posterior[i - n] : visible[rim.vertex(i - 2 * n)];
      texture[2 * i] = Math.max(0.003f, Math.min(0.997f, u));
    }
    replace(mesh.getTexCoords(), texture);
  }

  private void place(EarSurface s) {
    int n = s.vertexCount();
    float[] outward = rim.outward(s.points(), s.normals());
    float[] points = new float[3 * (2 * n + rim.vertexCount())];
    float[] normals = new float[points.length];
    for (int v = 0; v < n; v++) {
      float half = Math.max(thinnest, s.thickness()[v]) / 2;
      set(points, normals, v, s.points(), v, s.normals(), v, half);
      set(points, normals, n + v, s.points(), v, s.normals(), v, -half);
    }
    for (int r = 0; r < rim.vertexCount(); r++) {
      int v = rim.vertex(r);
      float half = Math.max(thinnest, s.thickness()[v]) / 2;
      set(points, normals, 2 * n + r, s.points(), v, outward, r, half);
    }
    replace(mesh.getPoints(), points);
    replace(mesh.getNormals(), normals);
    light(points, normals);
  }

  private void light(float[] points, float[] normals) {
    double brightest = Lamp.strength(lamps);
    for (int i = 0; !lamps.isEmpty() && 2 * i < texture.length; i++) {
      texture[2 * i + 1] = Glow.row(Lamp.on(lamps, points, normals, 3 * i) / brightest);
    }
    replace(mesh.getTexCoords(), texture);
  }

  private void set(
      float[] points, float[] normals, int to, float[] p, int v, float[] d, int w, float by) {
    float[] moved = new float[3];
    float[] turned = new float[3];
    for (int c = 0; c < 3; c++) {
      moved[c] = p[3 * v + c] + by * d[3 * w + c];
      turned[c] = by < 0 ? -d[3 * w + c] : d[3 * w + c];
    }
    Vectors.toScene(moved, 0, points, 3 * to, mirrored);
    Vectors.toScene(turned, 0, normals, 3 * to, mirrored);
  }

  private static void replace(javafx.collections.ObservableFloatArray array, float[] values) {
    if (array.size() == values.length) {
      array.set(0, values, 0, values.length);
    } else {
      array.setAll(values);
    }
  }
}
