package auricle.viewer.scene;

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
final class HeadPatch {
  private static final int STEPS = 40;
  private static final double REACH_MM = 85;
  private static final double BEHIND_EAR_MM = 1.2;

  private HeadPatch() {}

  /** The head beside a right ear, or a left one. */
  static MeshView of(boolean mirrored) {
    TriangleMesh mesh = new TriangleMesh(VertexFormat.POINT_NORMAL_TEXCOORD);
    mesh.getTexCoords().setAll(0.5f, 0.5f);
    float[] points = new float[3 * (STEPS + 1) * (STEPS + 1)];
    float[] normals = new float[points.length];
    for (int i = 0; i <= STEPS; i++) {
      for (int j = 0; j <= STEPS; j++) {
        put(i, j, points, normals, mirrored);
      }
    }
    mesh.getPoints().setAll(points);
    mesh.getNormals().setAll(normals);
    mesh.getFaces().setAll(faces(mirrored));
    MeshView view = new MeshView(mesh);
    view.setCullFace(CullFace.BACK);
    PhongMaterial material = new PhongMaterial(Color.web("#c9b3a4"));
    material.setSpecularColor(Color.gray(0.05));
    view.setMaterial(material);
    view.setMouseTransparent(true);
    return view;
  }

  private static void put(int i, int j, float[] points, float[] normals, boolean mirrored) {
    double angle = 2 * Math.PI * i / STEPS;
    double r = REACH_MM * j / STEPS;
    double y = r * Math.cos(angle);
    double z = 1.15 * r * Math.sin(angle);
    float[] place = {(float) depth(y, z), (float) y, (float) z};
    double h = 0.5;
    float dy = (float) ((depth(y + h, z) - depth(y - h, z)) / (2 * h));
    float dz = (float) ((depth(y, z + h) - depth(y, z - h)) / (2 * h));
    float[] normal = {1, -dy, -dz};
    Vectors.normalise(normal, 0);
    int at = 3 * (i * (STEPS + 1) + j);
    Vectors.toScene(place, 0, points, at, mirrored);
    Vectors.toScene(normal, 0, normals, at, mirrored);
  }

  /** Height of the head's surface over the mastoid plane, mm. */
  private static double depth(double y, double z) {
    double bend = y > 0 ? 210 : 130;
    return -BEHIND_EAR_MM - y * y / bend - z * z / 260;
  }

  private static int[] faces(boolean mirrored) {
    int[] faces = new int[STEPS * STEPS * 18];
    int next = 0;
    for (int i = 0; i < STEPS; i++) {
      for (int j = 0; j < STEPS; j++) {
        int a = i * (STEPS + 1) + j;
        int b = a + 1;
        int c = a + STEPS + 1;
        int d = c + 1;
        int[] corners = mirrored ? new int[] {a, d, b, a, c, d} : new int[] {a, b, d, a, d, c};
        for (int v : corners) {
          faces[next++] = v;
          faces[next++] = v;
          faces[next++] = 0;
        }
      }
    }
    return faces;
  }
}
