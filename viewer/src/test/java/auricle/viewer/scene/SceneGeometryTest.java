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
