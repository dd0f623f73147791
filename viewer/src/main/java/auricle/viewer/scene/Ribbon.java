package auricle.viewer.scene;

import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;

/** A translucent band between two lines with equally many places, seen from both sides. */
public final class Ribbon {
  private final TriangleMesh mesh = new TriangleMesh();
  private final MeshView node = new MeshView(mesh);

  /** A band of a colour that may let light through. */
  public Ribbon(Color colour) {
    mesh.getTexCoords().setAll(0.5f, 0.5f);
    node.setCullFace(CullFace.NONE);
    PhongMaterial material = new PhongMaterial(colour);
    material.setSpecularColor(Color.TRANSPARENT);
    node.setMaterial(material);
  }

  /** What is put into the scene. */
  public MeshView node() {
    return node;
  }

  /** Spans from one line to the other. */
  public void between(List<Spot> one, List<Spot> other, boolean mirrored) {
    int count = Math.min(one.size(), other.size());
    float[] points = new float[6 * count];
    for (int i = 0; i < count; i++) {
      put(one.get(i), points, 6 * i, mirrored);
      put(other.get(i), points, 6 * i + 3, mirrored);
    }
    int[] faces = new int[Math.max(0, count - 1) * 12];
    for (int i = 0; i + 1 < count; i++) {
      int a = 2 * i;
      int[] corners = {a, a + 1, a + 3, a, a + 3, a + 2};
      for (int k = 0; k < 6; k++) {
        faces[12 * i + 2 * k] = corners[k];
      }
    }
    mesh.getFaces().clear();
    mesh.getPoints().clear();
    mesh.getPoints().setAll(points);
    mesh.getFaces().setAll(faces);
    node.setVisible(count > 1);
  }

  private static void put(Spot spot, float[] points, int at, boolean mirrored) {
    float[] ear = {(float) spot.x_mm(), (float) spot.y_mm(), (float) spot.z_mm()};
    Vectors.toScene(ear, 0, points, at, mirrored);
  }
}
