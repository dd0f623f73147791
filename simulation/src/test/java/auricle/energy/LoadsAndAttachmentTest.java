package auricle.energy;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import auricle.geometry.PlateFrame;
import auricle.geometry.Vectors;
import auricle.mesh.Topology;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LoadsAndAttachmentTest {
  private static final int N = 3;
  private final Topology mesh = Shapes.grid(N, N);
  private final double[] flat = Shapes.flat(N, N);
  private final double[] u = Shapes.shaken(flat, 0.2, 17);
  private final int[] all = IntStream.range(0, mesh.triangleCount()).toArray();

  @Test
  void attachmentIsExactAndActsAlongAndAcrossItsNormal() {
    double[] normals = {0, 0, 2, 1, 1, 0};
    ElasticAttachment bed =
        new ElasticAttachment(
            "bed", new int[] {2, 5}, new double[] {0.5, 2}, normals, flat, 3, 0.25);
    EnergyTermContract.assertExact(bed, u);
    double[] moved = flat.clone();
    moved[6] += 0.1;
    moved[8] += 0.2;
    assertEquals(0.5 * 0.5 * (3 * 0.04 + 0.25 * 0.01), bed.value(0, moved), 1e-15);
    assertEquals(0, Shapes.energy(bed, flat));
    ElasticAttachment even =
        ElasticAttachment.isotropic("even", new int[] {2}, new double[] {0.5}, flat, 4);
    assertEquals(0.5 * 0.5 * 4 * 0.05, even.value(0, moved), 1e-15);
    assertThrows(
        IllegalArgumentException.class,
        () -> ElasticAttachment.isotropic("bad", new int[] {2}, new double[0], flat, 4));
  }

  @Test
  void deadLoadsAreExactAndSumToTheirResultant() {
    int[] rim =
        IntStream.range(0, mesh.edgeCount())
            .filter(e -> mesh.isBoundary(e) && flat[3 * mesh.edgeStart(e) + 1] == 0)
            .filter(e -> flat[3 * mesh.edgeEnd(e) + 1] == 0)
            .toArray();
    DeadLoad load =
        new DeadLoad.Builder(mesh, flat)
            .onEdges(rim, new double[] {0, 2, 0})
            .onTriangles(all, new double[] {0, 0, 0.5})
            .onVolume(all, 0.8, new double[] {1, 0, 0})
            .onVertex(7, new double[] {0, 0, -1})
            .build("loads");
    EnergyTermContract.assertExact(load, u);
    assertArrayEquals(new double[] {7.2, 6, 3.5}, load.resultant(), 1e-12);
    assertEquals(0, Shapes.energy(load, flat));
    double full = Shapes.energy(load, u);
    load.setLoadFactor(0.25);
    assertEquals(0.25 * full, Shapes.energy(load, u), 1e-14);
  }

  @Test
  void pointForceOffTheSurfaceIsExactAndTurnsThePlate() {
    SurfacePoint point = new SurfacePoint(mesh, 4, 0.2, 0.5, 1.5);
    PointForce force = new PointForce("pull", point, flat, new double[] {1, 0.5, -2});
    EnergyTermContract.assertExact(force, u);
    double[] gradient = Shapes.gradient(force, u);
    double[] moment = new double[3];
    for (int v = 0; v < mesh.vertexCount(); v++) {
      double[] pull = Vectors.scale(-1, Vectors.at(gradient, 3 * v));
      moment = Vectors.add(moment, 1, Vectors.cross(Vectors.at(u, 3 * v), pull));
    }
    double[] expected = Vectors.cross(point.position(u), new double[] {1, 0.5, -2});
    assertArrayEquals(expected, moment, 1e-12);
  }

  /** A regular octahedron, normals outward. */
  private static Topology octahedron() {
    return new Topology(
        6, new int[] {0, 1, 2, 1, 3, 2, 3, 4, 2, 4, 0, 2, 1, 0, 5, 3, 1, 5, 4, 3, 5, 0, 4, 5});
  }

  private static double[] octahedronPlaces() {
    double[] places = {1, 0, 0, 0, 1, 0, 0, 0, 1, -1, 0, 0, 0, -1, 0, 0, 0, -1};
    return Arrays.copyOf(places, octahedron().unknowns().size());
  }

  @Test
  void pressureOnAClosedSurfaceIsExactAndDoesNotDependOnTheOrigin() {
    Topology body = octahedron();
    double[] rest = octahedronPlaces();
    double[] now = Shapes.shaken(rest, 0.2, 4);
    int[] faces = IntStream.range(0, 8).toArray();
    FollowerPressure a = new FollowerPressure("p", body, faces, rest, 3, new double[3]);
    FollowerPressure b = new FollowerPressure("p", body, faces, rest, 3, new double[] {5, -2, 1});
    EnergyTermContract.assertExact(a, now);
    EnergyTermContract.assertExact(b, now);
    assertArrayEquals(Shapes.gradient(a, now), Shapes.gradient(b, now), 1e-13);
    assertArrayEquals(facePush(body, now, 3), Shapes.gradient(a, now), 1e-14);
    assertEquals(-1, a.firstLooseEdge(new boolean[rest.length]));
    double before = Shapes.energy(a, now);
    assertEquals(before, Shapes.energy(a, Shapes.rigidlyMoved(now, 6, 0.8)), 1e-11);
  }

  /** −p A n / 3 on every corner. */
  private static double[] facePush(Topology body, double[] u, double pressure) {
    double[] push = new double[u.length];
    for (int t = 0; t < body.triangleCount(); t++) {
      PlateFrame frame =
          new PlateFrame(
              Vectors.at(u, 3 * body.vertex(t, 0)),
              Vectors.at(u, 3 * body.vertex(t, 1)),
              Vectors.at(u, 3 * body.vertex(t, 2)));
      for (int k = 0; k < 9; k++) {
        push[3 * body.vertex(t, k / 3) + k % 3] -=
            pressure * frame.area() / 3 * frame.normal()[k % 3];
      }
    }
    return push;
  }

  @Test
  void pressureOnAnOpenSurfaceIsRightOnlyWhereItsRimIsHeldOrStaysInAPlaneThroughTheOrigin() {
    Topology body = octahedron();
    double[] rest = octahedronPlaces();
    int[] upper = {0, 1, 2, 3};
    FollowerPressure inPlane = new FollowerPressure("p", body, upper, rest, 3, new double[3]);
    boolean[] nothing = new boolean[rest.length];
    boolean[] slidingRim = new boolean[rest.length];
    boolean[] heldRim = new boolean[rest.length];
    for (int v : new int[] {0, 1, 3, 4}) {
      slidingRim[3 * v + 2] = true;
      Arrays.fill(heldRim, 3 * v, 3 * v + 3, true);
    }
    assertNotEquals(-1, inPlane.firstLooseEdge(nothing));
    assertEquals(-1, inPlane.firstLooseEdge(slidingRim));
    FollowerPressure off =
        new FollowerPressure("p", body, upper, rest, 3, new double[] {0.1, 0.2, 1});
    assertNotEquals(-1, off.firstLooseEdge(slidingRim));
    assertEquals(-1, off.firstLooseEdge(heldRim));
    // what the sliding rim feels in its plane, and the free top everywhere, is the pressure's share
    double[] gradient = Shapes.gradient(inPlane, rest);
    Topology half = new Topology(6, Arrays.copyOf(body.triangles(), 12));
    double[] push = facePush(half, rest, 3);
    for (int k = 0; k < 18; k++) {
      if (!slidingRim[k]) {
        assertEquals(push[k], gradient[k], 1e-14);
      }
    }
  }
}
