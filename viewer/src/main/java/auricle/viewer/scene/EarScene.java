package auricle.viewer.scene;

import java.util.List;
import java.util.Optional;
import javafx.scene.AmbientLight;
import javafx.scene.Group;
import javafx.scene.PointLight;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;

/**
 * The picture in three dimensions: head, ear, ghost of before, target and lines, seen by an eye.
 */
public final class EarScene {
  /** A ghost nearer than this would flicker through the ear. */
  private static final double GHOST_FROM_MM = 1.7;

  private static final Lamp KEY = new Lamp(-260, -330, -520, 0.62);
  private static final Lamp FILL = new Lamp(420, -120, -260, 0.22);
  private static final Lamp FROM_WITHIN = new Lamp(0, 60, 520, 0.42);

  /** Those whose light on the ear is a colour of its own. */
  private static final List<Lamp> SOFT = List.of(FILL, FROM_WITHIN);

  private final Eye eye = new Eye();
  private final EarMesh ear = new EarMesh(SOFT);
  private final EarMesh ghost = new EarMesh(0, List.of());
  private final MeshView earNode = ear.node();
  private final MeshView ghostNode = ghost.node();
  private final HeadSide head = new HeadSide(List.of(KEY, FILL));
  private final Group marks = new Group();
  private final Group veils = new Group(ghostNode);
  private final Glass picture;
  private Runnable still = () -> {};
  private boolean mirrored;
  private Optional<Palette> painted = Optional.empty();
  private Optional<EarSurface> before = Optional.empty();

  /** An empty scene. */
  public EarScene() {
    Group lamps = new Group(lamp(KEY), lamp(FILL), lamp(FROM_WITHIN));
    Group world =
        new Group(new AmbientLight(Color.gray(0.34)), lamps, head.node(), earNode, marks, veils);
    picture = new Glass(world, eye.camera(), this::rest);
    earNode.setCullFace(CullFace.BACK);
    earNode.setId("ear");
    ghostNode.setCullFace(CullFace.BACK);
    ghostNode.setMouseTransparent(true);
    veils.setMouseTransparent(true);
    PhongMaterial veil = new PhongMaterial(Color.web("#86a4d8", 0.30));
    veil.setSpecularColor(Color.TRANSPARENT);
    ghostNode.setMaterial(veil);
    ghostNode.setVisible(false);
    paint(Palette.SKIN);
    look(Orbit.at(ClinicalView.THREE_QUARTER));
  }

  private PointLight lamp(Lamp lamp) {
    PointLight light = lamp.light();
    light.getExclusionScope().addAll(veils, head.node());
    if (SOFT.contains(lamp)) {
      light.getExclusionScope().add(earNode);
    }
    return light;
  }

  /** What is put into a window. */
  public Glass picture() {
    return picture;
  }

  /** The ear's node, which can be picked. */
  public MeshView earNode() {
    return earNode;
  }

  /** The ear's mesh. */
  public EarMesh ear() {
    return ear;
  }

  /** Lines and markers on the ear. */
  public Group marks() {
    return marks;
  }

  /** Translucent things, drawn after everything else. */
  public Group veils() {
    return veils;
  }

  /** Whether a left ear is drawn. */
  public boolean mirrored() {
    return mirrored;
  }

  /**
   * Shows an ear, mirrored if it is a left one. One that has moved since is first drawn without
   * smoothing, sooner, and finely when it rests.
   */
  public void show(EarSurface surface, boolean left) {
    if (left == mirrored && ear.shown().map(s -> !s.looksLike(surface)).orElse(false)) {
      picture.moving();
    }
    mirrored = left;
    ear.show(surface, left);
    see(eye.orbit());
  }

  /** Shows the head, or not. */
  public void showHead(boolean wanted) {
    head.show(wanted);
  }

  /**
   * Shows a ghost; an empty one hides it. Beside an ear that moves it stays as it was laid until
   * the ear rests: to lay it takes as long as to lay the ear, which is waited for.
   */
  public void showGhost(Optional<EarSurface> surface) {
    before = surface;
    ghostNode.setVisible(surface.isPresent());
    if (!picture.isMoving() || ghost.shown().isEmpty()) {
      layGhost();
    }
  }

  /** What else is done when a move ends, before the world is drawn finely. */
  public void whenStill(Runnable task) {
    still = task;
  }

  private void rest() {
    layGhost();
    still.run();
  }

  private void layGhost() {
    before.map(this::whereMoved).ifPresent(s -> ghost.show(s, mirrored));
  }

  /**
   * A surface that hides within the wall of what is shown where the two are near: there it would
   * only shine through. Its triangles stay the same from edit to edit, as a mesh in use needs.
   */
  private EarSurface whereMoved(EarSurface before) {
    return ear.shown().map(now -> before.withinWhereNear(now, GHOST_FROM_MM)).orElse(before);
  }

  /** Lays a palette over the ear. */
  public void paint(Palette palette) {
    if (painted.filter(palette::equals).isPresent()) {
      return;
    }
    painted = Optional.of(palette);
    PhongMaterial material = new PhongMaterial(Color.WHITE);
    material.setDiffuseMap(palette.picture());
    material.setSelfIlluminationMap(Glow.of(palette::colour, Lamp.strength(SOFT)));
    material.setSpecularColor(Color.gray(palette == Palette.SKIN ? 0.16 : 0.08));
    material.setSpecularPower(18);
    earNode.setMaterial(material);
  }

  /** Colours the skin by hollows and ridges. */
  public void paintSkin(EarSurface surface) {
    float[] visible = Hollows.of(surface);
    float[] posterior = new float[visible.length];
    for (int v = 0; v < visible.length; v++) {
      posterior[v] = 0.25f + 0.5f * (1 - visible[v]);
    }
    ear.colour(visible, posterior);
  }

  /** Where the eye is. */
  public Orbit orbit() {
    return eye.orbit();
  }

  /** Moves the eye to where it stays. */
  public void look(Orbit orbit) {
    picture.still();
    see(orbit);
  }

  private void see(Orbit orbit) {
    eye.look(orbit, mirrored);
    head.seenFrom(orbit, mirrored);
  }

  /** Draws everything finely, also what moved just now. */
  public void still() {
    picture.still();
  }

  /** Moves the eye on its way: drawn without smoothing until it rests. */
  public void sweep(Orbit orbit) {
    picture.moving();
    see(orbit);
  }

  /** Looks at the middle of these places. */
  public void centre(List<Spot> ends) {
    if (!ends.isEmpty()) {
      double x = ends.stream().mapToDouble(Spot::x_mm).average().orElse(0);
      double y = ends.stream().mapToDouble(Spot::y_mm).average().orElse(0);
      double z = ends.stream().mapToDouble(Spot::z_mm).average().orElse(0);
      eye.middle(new Spot(x, y, z));
      see(eye.orbit());
    }
  }

  /** Millimetres that one pixel covers at the point looked at. */
  public double perPixel_mm() {
    return eye.perPixel_mm(picture.getHeight());
  }

  /** A picked point of the scene as a place in the ear frame. */
  public Spot toEar(double x, double y, double z) {
    return Vectors.toEar(x, y, z, mirrored);
  }
}
