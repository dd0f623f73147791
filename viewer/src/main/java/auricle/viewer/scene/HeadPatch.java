package auricle.viewer.scene;

import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import javafx.scene.shape.VertexFormat;

/**
 * The side of the head around the ear, for scale: flat at the mastoid plane, rounding off towards
 * face, crown and neck. Drawn from outside only, so that it does not hide the ear from behind.
 */
enum HeadPatch {
  /** The root of the ear stands on it, on a low mound: for an eye before the ear or beside it. */
  TO_THE_ROOT(125) {
    @Override
    double height_mm(double y, double z) {
      return -0.2 - roundingOff(y, y > 0 ? 320 : 200) - roundingOff(z, 360) + root(y, z);
    }
  },
  /** Falls away at once: for an eye behind the ear, which is to see where bites are pulled. */
  FALLING_AWAY(125) {
    @Override
    double height_mm(double y, double z) {
      double bend = y > 0 ? 210 : 130;
      return -1.2 - y * y / bend - z * z / 260;
    }
  };

  /** No more than it needs to look round: it is drawn by software where there is no card. */
  private static final int AROUND = 56;

  private static final int OUTWARDS = 32;
  private static final double FLAT_MM = 22;

  private static final Color SKIN = Color.web("#c9b3a4");

  private final double reach_mm;

  /**
   * @param reach_mm how far it goes from the middle of the ear
   */
  HeadPatch(double reach_mm) {
    this.reach_mm = reach_mm;
  }

  /** Height of the head's surface over the mastoid plane; y towards the face, z up, mm. */
  abstract double height_mm(double y, double z);

  /**
   * The head beside a right ear, or a left one.
   *
   * @param lamps whose light is on it
   */
  MeshView node(boolean mirrored, List<Lamp> lamps) {
    TriangleMesh mesh = new TriangleMesh(VertexFormat.POINT_NORMAL_TEXCOORD);
    float[] points = new float[3 * (AROUND + 1) * (OUTWARDS + 1)];
    float[] normals = new float[points.length];
    for (int i = 0; i <= AROUND; i++) {
      for (int j = 0; j <= OUTWARDS; j++) {
        put(i, j, points, normals, mirrored);
      }
    }
    mesh.getPoints().setAll(points);
    mesh.getNormals().setAll(normals);
    mesh.getTexCoords().setAll(light(points, normals, lamps));
    mesh.getFaces().setAll(faces(mirrored));
    MeshView view = new MeshView(mesh);
    view.setCullFace(CullFace.BACK);
    PhongMaterial material = new PhongMaterial(SKIN);
    material.setSelfIlluminationMap(Glow.of(u -> SKIN, Lamp.strength(lamps)));
    view.setMaterial(material);
    view.setMouseTransparent(true);
    return view;
  }

  private static float[] light(float[] points, float[] normals, List<Lamp> lamps) {
    float[] texture = new float[points.length / 3 * 2];
    for (int v = 0; 2 * v < texture.length; v++) {
      texture[2 * v] = 0.5f;
      double light = Lamp.on(lamps, points, normals, 3 * v);
      texture[2 * v + 1] = Glow.row(light / Lamp.strength(lamps));
    }
    return texture;
  }

  private void put(int i, int j, float[] points, float[] normals, boolean mirrored) {
    double angle = 2 * Math.PI * i / AROUND;
    double out = (double) j / OUTWARDS;
    double r = reach_mm * out * (0.5 + 0.5 * out); // finer beside the ear
    double y = r * Math.cos(angle);
    double z = 1.15 * r * Math.sin(angle);
    float[] place = {(float) height_mm(y, z), (float) y, (float) z};
    double h = 0.5;
    float dy = (float) ((height_mm(y + h, z) - height_mm(y - h, z)) / (2 * h));
    float dz = (float) ((height_mm(y, z + h) - height_mm(y, z - h)) / (2 * h));
    float[] normal = {1, -dy, -dz};
    Vectors.normalise(normal, 0);
    int at = 3 * (i * (OUTWARDS + 1) + j);
    Vectors.toScene(place, 0, points, at, mirrored);
    Vectors.toScene(normal, 0, normals, at, mirrored);
  }

  /**
   * How far the head has fallen away at a distance from the middle of the ear: nearly flat at
   * first, then like a bow, with no step in its bend, which would be seen as an edge.
   */
  private static double roundingOff(double distance_mm, double bend_mm) {
    double t = distance_mm / FLAT_MM;
    return FLAT_MM * FLAT_MM / bend_mm * (Math.cbrt(1 + Math.pow(t, 6)) - 1);
  }

  /**
   * The ear's root: a low mound under the floor of the bowl, which rises towards the face. It fades
   * slowly up and down: from the front its end would be a kink in the outline of the head.
   */
  private static double root(double y, double z) {
    double rise = 1.7 + 5.2 * step((y + 2) / 19);
    double within = step((y + 15) / 10) * (1 - step((y - 15) / 28));
    return rise * within / (1 + Math.pow((z + 6) / 26, 4));
  }

  /** From 0 at 0 to 1 at 1, without a kink. */
  private static double step(double t) {
    double s = Math.max(0, Math.min(1, t));
    return s * s * (3 - 2 * s);
  }

  private static int[] faces(boolean mirrored) {
    int[] faces = new int[AROUND * OUTWARDS * 18];
    int next = 0;
    for (int i = 0; i < AROUND; i++) {
      for (int j = 0; j < OUTWARDS; j++) {
        int a = i * (OUTWARDS + 1) + j;
        int b = a + 1;
        int c = a + OUTWARDS + 1;
        int d = c + 1;
        int[] corners = mirrored ? new int[] {a, d, b, a, c, d} : new int[] {a, b, d, a, d, c};
        for (int v : corners) {
          faces[next++] = v;
          faces[next++] = v;
          faces[next++] = v;
        }
      }
    }
    return faces;
  }
}
