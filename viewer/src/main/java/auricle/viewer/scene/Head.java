package auricle.viewer.scene;

import javafx.scene.Group;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.Cylinder;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.Sphere;
import javafx.scene.shape.TriangleMesh;
import javafx.scene.shape.VertexFormat;
import javafx.scene.transform.Scale;

/**
 * A schematic head to hang ears on: an egg with a nose and a neck. Its measures are our own choice
 * for drawing; nothing is computed from them.
 */
final class Head {
  /** Distance of each mastoid plane from the middle. */
  static final double HALF_WIDTH_MM = 70;

  private static final double DEPTH_MM = 95;
  private static final double CROWN_MM = 118;
  private static final double CHIN_MM = 122;
  private static final double FORWARD_MM = 12;
  private static final int STEPS = 80;
  private static final Color SKIN = Color.web("#c9b3a4");

  private Head() {}

  /** The head in the scene's frame: x right, y down, z into the picture, face towards the eye. */
  static Group of() {
    PhongMaterial skin = new PhongMaterial(SKIN);
    skin.setSpecularColor(Color.gray(0.05));
    MeshView egg = new MeshView(mesh());
    egg.setCullFace(CullFace.BACK);
    egg.setMaterial(skin);
    Cylinder neck = new Cylinder(50, 130);
    neck.setMaterial(skin);
    neck.setTranslateY(150);
    neck.setTranslateZ(12);
    Sphere nose = new Sphere(12);
    nose.getTransforms().add(new Scale(1, 2.1, 1.5));
    nose.setMaterial(skin);
    nose.setTranslateY(18);
    nose.setTranslateZ(-FORWARD_MM - DEPTH_MM + 2);
    return new Group(egg, neck, nose, eye(-1), eye(1));
  }

  /** A closed eye, so that the front is seen to be the front. */
  private static Sphere eye(int side) {
    Sphere eye = new Sphere(10);
    eye.getTransforms().add(new Scale(1.35, 0.55, 0.9));
    PhongMaterial lid = new PhongMaterial(SKIN.darker());
    lid.setSpecularColor(Color.gray(0.05));
    eye.setMaterial(lid);
    eye.setTranslateX(side * 31);
    eye.setTranslateY(-14);
    eye.setTranslateZ(-FORWARD_MM - DEPTH_MM + 13);
    return eye;
  }

  private static TriangleMesh mesh() {
    TriangleMesh mesh = new TriangleMesh(VertexFormat.POINT_NORMAL_TEXCOORD);
    mesh.getTexCoords().setAll(0.5f, 0.5f);
    int across = STEPS + 1;
    float[] points = new float[3 * across * across];
    float[] normals = new float[points.length];
    for (int i = 0; i <= STEPS; i++) {
      for (int j = 0; j <= STEPS; j++) {
        double t = Math.PI * (i / (double) STEPS - 0.5);
        double a = 2 * Math.PI * j / STEPS;
        int at = 3 * (i * across + j);
        put(points, at, place(t, a));
        put(normals, at, normal(t, a));
      }
    }
    mesh.getPoints().setAll(points);
    mesh.getNormals().setAll(normals);
    mesh.getFaces().setAll(faces(across));
    return mesh;
  }

  private static void put(float[] to, int at, double[] from) {
    for (int c = 0; c < 3; c++) {
      to[at + c] = (float) from[c];
    }
  }

  /** A point: t from the chin (−π/2) to the crown, a around; narrower towards the chin. */
  private static double[] place(double t, double a) {
    double up = Math.sin(t);
    double ring = Math.pow(Math.max(0, Math.cos(t)), 0.8);
    double jaw = up < 0 ? 1 - 0.22 * up * up : 1;
    double x = (HALF_WIDTH_MM + 1) * ring * jaw * Math.cos(a);
    double forward = FORWARD_MM + DEPTH_MM * ring * Math.sin(a) + (up < 0 ? 14 * up * up : 0);
    double high = 10 + (up > 0 ? CROWN_MM : CHIN_MM) * up;
    return new double[] {x, -high, -forward};
  }

  private static double[] normal(double t, double a) {
    double h = 1e-3;
    double held = Math.max(-1.5, Math.min(1.5, t));
    double[] u = difference(place(held + h, a), place(held - h, a));
    double[] v = difference(place(held, a + h), place(held, a - h));
    double[] n = {u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]};
    double length = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
    double[] p = place(held, a);
    double out = n[0] * p[0] + n[1] * p[1] + n[2] * p[2] < 0 ? -1 : 1;
    return new double[] {out * n[0] / length, out * n[1] / length, out * n[2] / length};
  }

  private static double[] difference(double[] a, double[] b) {
    return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
  }

  private static int[] faces(int across) {
    int[] faces = new int[STEPS * STEPS * 18];
    int next = 0;
    for (int i = 0; i < STEPS; i++) {
      for (int j = 0; j < STEPS; j++) {
        int a = i * across + j;
        int[] corners = {a, a + across, a + 1, a + 1, a + across, a + across + 1};
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
