package auricle.viewer.scene;

import java.util.Optional;
import javafx.scene.AmbientLight;
import javafx.scene.Group;
import javafx.scene.PerspectiveCamera;
import javafx.scene.SceneAntialiasing;
import javafx.scene.SubScene;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import javafx.scene.transform.Affine;
import javafx.scene.transform.Rotate;
import javafx.scene.transform.Translate;

/**
 * Both ears on a schematic head. The right ear is at the left of the picture, as when one stands
 * before a person. x right, y down, z into the picture; the mastoid planes stand at ± half the
 * width of the head.
 */
public final class HeadScene {
  private static final double DISTANCE_MM = 730;

  /** The picture's middle over that of the ears, so that crown and chin are both in it. */
  private static final double UP_MM = 4;

  private final Side right = new Side(false);
  private final Side left = new Side(true);
  private final Rotate around = new Rotate(0, Rotate.Y_AXIS);
  private final Rotate up = new Rotate(0, Rotate.X_AXIS);
  private final SubScene picture;

  /** One ear, turned to its side of the head. */
  private static final class Side {
    private final EarMesh mesh = new EarMesh();
    private final MeshView node = mesh.node();
    private final boolean mirrored;

    Side(boolean mirrored) {
      this.mirrored = mirrored;
      node.setCullFace(CullFace.BACK);
      PhongMaterial skin = new PhongMaterial(Color.WHITE);
      skin.setDiffuseMap(Palette.SKIN.picture());
      skin.setSpecularColor(Color.gray(0.16));
      skin.setSpecularPower(18);
      node.setMaterial(skin);
      double s = mirrored ? -1 : 1;
      node.getTransforms()
          .add(new Affine(0, 0, s, -s * Head.HALF_WIDTH_MM, 0, 1, 0, 0, -s, 0, 0, 0));
    }

    void show(Optional<EarSurface> surface) {
      node.setVisible(surface.isPresent());
      surface.ifPresent(this::draw);
    }

    private void draw(EarSurface s) {
      mesh.show(s, mirrored);
      float[] visible = Hollows.of(s);
      float[] posterior = new float[visible.length];
      for (int v = 0; v < visible.length; v++) {
        posterior[v] = 0.25f + 0.5f * (1 - visible[v]);
      }
      mesh.colour(visible, posterior);
    }
  }

  /** A head without ears. */
  public HeadScene() {
    Group lamps =
        new Group(new Lamp(-400, -350, -700, 0.6).light(), new Lamp(450, -150, -500, 0.3).light());
    Group world = new Group(new AmbientLight(Color.gray(0.36)), lamps, Head.of());
    world.getChildren().addAll(right.node, left.node);
    picture = new SubScene(world, 300, 300, true, SceneAntialiasing.BALANCED);
    PerspectiveCamera camera = new PerspectiveCamera(true);
    camera.setFieldOfView(20);
    camera.setNearClip(100);
    camera.setFarClip(3000);
    camera.getTransforms().setAll(around, up, new Translate(0, -UP_MM, -DISTANCE_MM));
    picture.setCamera(camera);
    turn(0, 0);
  }

  /** What is put into a window. */
  public SubScene picture() {
    return picture;
  }

  /** Shows the ears; a side without one stays bare. */
  public void show(Optional<EarSurface> rightEar, Optional<EarSurface> leftEar) {
    right.show(rightEar);
    left.show(leftEar);
  }

  /**
   * Turns the eye.
   *
   * @param around_deg 0 before the face, 180 behind the head
   * @param up_deg 90 looks down on the crown
   */
  public void turn(double around_deg, double up_deg) {
    around.setAngle(around_deg);
    up.setAngle(-up_deg);
  }
}
