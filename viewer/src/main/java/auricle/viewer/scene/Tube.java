package auricle.viewer.scene;

import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import javafx.scene.shape.VertexFormat;

/**
 * A round line through places. Its mesh is changed in place while it has as many places, and made
 * anew otherwise; see {@link EarMesh}.
 */
public final class Tube {
  private static final int SIDES = 6;

  private final MeshView node = new MeshView();
  private TriangleMesh mesh = new TriangleMesh(VertexFormat.POINT_NORMAL_TEXCOORD);
  private double radius_mm;
  private Color shown = Color.TRANSPARENT;

  /** A line of a colour, so many mm thick from its middle. */
  public Tube(Color colour, double radius_mm) {
    this.radius_mm = radius_mm;
    node.setCullFace(CullFace.NONE);
    colour(colour);
  }

  /** Changes the colour. */
  public void colour(Color colour) {
    if (colour.equals(shown)) {
      return;
    }
    shown = colour;
    PhongMaterial material = new PhongMaterial(colour);
    material.setSpecularColor(Color.gray(0.3));
    node.setMaterial(material);
  }

  /** Changes the thickness for what is drawn next. */
  public void radius(double millimetres) {
    radius_mm = millimetres;
  }

  /** What is put into the scene. */
  public MeshView node() {
    return node;
  }

  /** Runs through places of the ear; fewer than two show nothing. */
  public void through(List<Spot> spots, boolean mirrored) {
    int count = spots.size() < 2 ? 0 : spots.size();
    float[] points = new float[3 * SIDES * count];
    float[] normals = new float[points.length];
    for (int i = 0; i < count; i++) {
      ring(spots, i, points, normals, mirrored);
    }
    if (mesh.getPoints().size() != points.length) {
      mesh = mesh(points, normals, faces(count));
      node.setMesh(mesh);
    } else {
      mesh.getPoints().set(0, points, 0, points.length);
      mesh.getNormals().set(0, normals, 0, normals.length);
    }
    node.setVisible(count > 0);
  }

  private static TriangleMesh mesh(float[] points, float[] normals, int[] faces) {
    TriangleMesh mesh = new TriangleMesh(VertexFormat.POINT_NORMAL_TEXCOORD);
    mesh.getTexCoords().setAll(0.5f, 0.5f);
    mesh.getPoints().setAll(points);
    mesh.getNormals().setAll(normals);
    mesh.getFaces().setAll(faces);
    return mesh;
  }

  private void ring(List<Spot> spots, int i, float[] points, float[] normals, boolean mirrored) {
    Spot before = spots.get(Math.max(0, i - 1));
    Spot after = spots.get(Math.min(spots.size() - 1, i + 1));
    double[] along = unit(minus(after, before));
    double[] off = Math.abs(along[2]) < 0.9 ? new double[] {0, 0, 1} : new double[] {1, 0, 0};
    double[] side = unit(cross(along, off));
    double[] up = cross(side, along);
    Spot here = spots.get(i);
    double[] middle = {here.x_mm(), here.y_mm(), here.z_mm()};
    float[] place = new float[3];
    float[] normal = new float[3];
    for (int k = 0; k < SIDES; k++) {
      double angle = 2 * Math.PI * k / SIDES;
      for (int c = 0; c < 3; c++) {
        normal[c] = (float) (Math.cos(angle) * side[c] + Math.sin(angle) * up[c]);
        place[c] = (float) (middle[c] + radius_mm * normal[c]);
      }
      Vectors.toScene(place, 0, points, 3 * (SIDES * i + k), mirrored);
      Vectors.toScene(normal, 0, normals, 3 * (SIDES * i + k), mirrored);
    }
  }

  private static int[] faces(int rings) {
    int[] faces = new int[Math.max(0, rings - 1) * SIDES * 18];
    int next = 0;
    for (int i = 0; i + 1 < rings; i++) {
      for (int k = 0; k < SIDES; k++) {
        int a = SIDES * i + k;
        int b = SIDES * i + (k + 1) % SIDES;
        for (int v : new int[] {a, b, b + SIDES, a, b + SIDES, a + SIDES}) {
          faces[next++] = v;
          faces[next++] = v;
          faces[next++] = 0;
        }
      }
    }
    return faces;
  }

  private static double[] minus(Spot a, Spot b) {
    return new double[] {a.x_mm() - b.x_mm(), a.y_mm() - b.y_mm(), a.z_mm() - b.z_mm()};
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private static double[] unit(double[] v) {
    double length = Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
    return length < 1e-12
        ? new double[] {0, 1, 0}
        : new double[] {v[0] / length, v[1] / length, v[2] / length};
  }
}
