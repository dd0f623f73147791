package auricle.viewer.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.paint.Color;
import javafx.scene.shape.Mesh;
import javafx.scene.shape.TriangleMesh;
import org.junit.jupiter.api.Test;

/** Geometry and colours of the picture; needs no screen. */
class SceneGeometryTest {
  private static final double ROUNDING = 1e-5;

  @Test
  void aChangedEarIsDrawnInTheSameMeshWithTheSameFaces() {
    EarMesh mesh = new EarMesh();
    mesh.show(StandInEar.of(0), false);
    TriangleMesh before = mesh.mesh();
    int faces = before.getFaces().size();
    float height = before.getPoints().get(44);
    mesh.show(StandInEar.of(0.4), false);
    assertSame(before, mesh.mesh());
    assertEquals(faces, mesh.mesh().getFaces().size());
    assertTrue(height < mesh.mesh().getPoints().get(44));
  }

  /** A mesh that grows and is then changed in place stops JavaFX (21) from drawing anything. */
  @Test
  void otherTrianglesAndLongerLinesAreDrawnInANewMesh() {
    EarMesh ear = new EarMesh();
    ear.show(StandInEar.of(0), false);
    TriangleMesh before = ear.mesh();
    ear.show(StandInEar.of(0), true);
    assertNotSame(before, ear.mesh());
    assertSame(ear.mesh(), ear.node().getMesh());
    Tube tube = new Tube(Color.BLACK, 0.3);
    tube.through(line(3), false);
    Mesh three = tube.node().getMesh();
    tube.through(line(3), true);
    assertSame(three, tube.node().getMesh());
    tube.through(line(4), true);
    assertNotSame(three, tube.node().getMesh());
  }

  private static List<Spot> line(int places) {
    return IntStream.range(0, places).mapToObj(i -> new Spot(i, 0, 0)).toList();
  }

  @Test
  void theBackIsDrawnWithReversedTrianglesAndKnowsWhichItIs() {
    EarMesh mesh = new EarMesh();
    EarSurface ear = StandInEar.of(0);
    mesh.show(ear, false);
    assertEquals(5, mesh.triangle(ear.triangleCount() + 5));
    assertTrue(mesh.posterior(ear.triangleCount() + 5));
    assertEquals(-1, mesh.triangle(2 * ear.triangleCount()));
  }

  @Test
  void aLeftEarIsTheMirrorImageOfARightOne() {
    EarMesh right = new EarMesh();
    EarMesh left = new EarMesh();
    right.show(StandInEar.of(0), false);
    left.show(StandInEar.of(0), true);
    assertEquals(right.mesh().getPoints().get(30), -left.mesh().getPoints().get(30), ROUNDING);
    assertEquals(right.mesh().getPoints().get(31), left.mesh().getPoints().get(31), ROUNDING);
  }

  @Test
  void anEarHasMovedWhenOneOfItsVerticesHas() {
    EarSurface ear = StandInEar.of(0);
    assertFalse(ear.movedBy(StandInEar.of(0), 0.02));
    assertTrue(ear.movedBy(StandInEar.of(0.1), 0.02));
    assertFalse(ear.movedBy(StandInEar.of(0.1), 1000));
  }

  @Test
  void lightThatIsNoLampOfTheSceneFollowsLambertsLaw() {
    List<Lamp> lamps = List.of(new Lamp(0, 0, -100, 0.5), new Lamp(100, 0, 0, 0.3));
    float[] place = {0, 0, 0};
    float half = (float) Math.sqrt(0.5);
    assertEquals(0.5, Lamp.on(lamps, place, new float[] {0, 0, -1}, 0), ROUNDING);
    assertEquals(0.8 * half, Lamp.on(lamps, place, new float[] {half, 0, -half}, 0), ROUNDING);
    assertEquals(0, Lamp.on(lamps, place, new float[] {0, 1, 0}, 0), ROUNDING);
    assertEquals(0, Lamp.on(lamps, place, new float[] {0, 0, 1}, 0), ROUNDING, "from behind");
  }

  @Test
  void lightOfAMovedEarIsReadAnewAndItsColoursStay() {
    EarMesh ear = new EarMesh(List.of(new Lamp(0, 60, 520, 0.4)));
    EarSurface first = StandInEar.of(0);
    float[] shares = new float[first.vertexCount()];
    java.util.Arrays.fill(shares, 0.25f);
    ear.show(first, false);
    ear.colour(shares, shares);
    float[] before = ear.mesh().getTexCoords().toArray(null);
    ear.show(StandInEar.of(0.4), false);
    float[] after = ear.mesh().getTexCoords().toArray(null);
    boolean lit = false;
    for (int i = 0; i < before.length; i += 2) {
      assertEquals(0.25f, after[i]);
      lit |= Math.abs(after[i + 1] - before[i + 1]) > 1e-3;
    }
    assertTrue(lit, "other places, other light");
  }

  @Test
  void lightnessOfAmountsRisesSteadily() {
    double before = -1;
    for (int i = 0; i <= 20; i++) {
      Color c = Palette.AMOUNT.colour(i / 20.0);
      int rgb =
          (int) (255 * c.getRed()) << 16
              | (int) (255 * c.getGreen()) << 8
              | (int) (255 * c.getBlue());
      double lightness = OkLab.of(rgb).l();
      assertTrue(lightness > before, "at " + i);
      before = lightness;
    }
  }

  @Test
  void turningPastTheTopStopsThere() {
    assertEquals(89.9, Orbit.at(ClinicalView.SIDE).turned(0, 200).up_deg());
  }

  @Test
  void halfWayBetweenTwoViewsTurnsTheShorterWay() {
    Orbit one = new Orbit(170, 0, 200, 0, 0);
    Orbit other = new Orbit(-170, 0, 200, 0, 0);
    assertEquals(180, Math.abs(one.towards(other, 0.5).around_deg()), 1e-9);
  }
}
