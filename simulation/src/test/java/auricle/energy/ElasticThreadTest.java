package auricle.energy;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.geometry.Vectors;
import auricle.mesh.Topology;
import java.util.List;
import org.junit.jupiter.api.Test;

class ElasticThreadTest {
  private static final int N = 4;
  private final Topology mesh = Shapes.grid(N, N);
  private final double[] u = Shapes.shaken(Shapes.flat(N, N), 0.15, 7);

  private ElasticThread loop() {
    return new ElasticThread("loop", bites(), true, 40);
  }

  private List<MaterialPoint> bites() {
    return List.of(
        new SurfacePoint(mesh, 1, 0.2, 0.3, -0.5),
        new SurfacePoint(mesh, 25, 0.6, 0.1, -0.5),
        new SurfacePoint(mesh, 27, 0.1, 0.1, -0.5),
        new SurfacePoint(mesh, 4, 0.3, 0.3, 0.4));
  }

  @Test
  void derivativesOfTheLoopAreExact() {
    ElasticThread thread = loop();
    for (double share : new double[] {0.3, 0.9, 0.999}) {
      thread.tieToLength(share * thread.length(u));
      EnergyTermContract.assertExact(thread, u);
    }
    thread.pull(1.5);
    EnergyTermContract.assertExact(thread, u);
  }

  @Test
  void derivativesAreExactWhereBitesShareATriangleOrItsCorners() {
    ElasticThread thread =
        new ElasticThread(
            "close",
            List.of(
                new SurfacePoint(mesh, 6, 0.2, 0.3, -0.5),
                new SurfacePoint(mesh, 6, 0.5, 0.3, 0.5),
                new SurfacePoint(mesh, 7, 0.2, 0.7, -0.5),
                new VertexPoint(mesh.vertex(6, 0))),
            false,
            10);
    thread.tieToLength(0.8 * thread.length(u));
    assertEquals(12, thread.stencil(0).length, "the four vertices of two neighbours");
    EnergyTermContract.assertExact(thread, u);
  }

  /** Two points nearer each other than the thread is thick, then on top of each other. */
  @Test
  void aPullFadesOutSmoothlyWhereItsPointsMeet() {
    VertexPoint a = new VertexPoint(mesh.vertex(6, 0));
    VertexPoint b = new VertexPoint(mesh.vertex(6, 1));
    ElasticThread thread = new ElasticThread("shut", List.of(a, b), false, 40, 0.2);
    thread.pull(0.8);
    for (double distance : new double[] {0.3, 0.2001, 0.1999, 0.1, 0.01, 0}) {
      double[] met = u.clone();
      for (int c = 0; c < 3; c++) {
        met[b.unknowns()[c]] = met[a.unknowns()[c]] + distance * (c == 1 ? 0.8 : c * 0.3);
      }
      EnergyTermContract.assertExact(thread, met);
      double pull = Vectors.norm(Vectors.at(Shapes.gradient(thread, met), a.unknowns()[0]));
      double apart = Vectors.norm(Vectors.subtract(b.position(met), a.position(met)));
      double s = Math.min(1, apart / 0.2);
      assertEquals(0.8 * (1.5 * s - 0.5 * s * s * s), pull, 1e-12);
      assertEquals(
          0.025 * (3 + 6 * s * s - s * s * s * s) + apart - 0.2 * s, thread.length(met), 1e-14);
    }
  }

  @Test
  void derivativesOfASpreadBiteAreExact() {
    List<MaterialPoint> held = bites();
    MeanPoint spread = new MeanPoint(held.subList(0, 3), List.of(0.5, 0.3, 0.2));
    ElasticThread thread =
        new ElasticThread("spread", List.of(spread, held.get(3), held.get(0)), true, 40);
    thread.tieToLength(0.9 * thread.length(u));
    EnergyTermContract.assertExact(thread, u);
  }

  @Test
  void sharesOfASpreadBiteSumToOne() {
    assertThrows(
        IllegalArgumentException.class, () -> new MeanPoint(bites(), List.of(0.4, 0.3, 0.2, 0.2)));
    assertThrows(IllegalArgumentException.class, () -> new MeanPoint(bites(), List.of(1.0)));
  }

  @Test
  void aTriangleCarriesAPointFromWhereItStandsAtRest() {
    double[] flat = Shapes.flat(N, N);
    double[] point = {1.3, 0.2, -0.7};
    SurfacePoint carried = SurfacePoint.carried(mesh, 3, flat, point);
    assertArrayEquals(point, carried.position(flat), 1e-14);
    double[] far = {1.3, 0.2 + 20, -0.7};
    assertThrows(IllegalArgumentException.class, () -> SurfacePoint.carried(mesh, 3, flat, far));
  }

  @Test
  void derivativesOfAnAnchoredThreadAreExact() {
    ElasticThread thread =
        new ElasticThread(
            "anchor",
            List.of(new FixedPoint(1, 2, -9), new SurfacePoint(mesh, 9, 0.3, 0.3, -0.5)),
            false,
            25);
    thread.tieToLength(5);
    EnergyTermContract.assertExact(thread, u);
  }

  @Test
  void derivativesAreExactInsideTheBlendOfSlackAndTaut() {
    ElasticThread thread = loop();
    double length = thread.length(u);
    double width = ThreadLaw.Elastic.BLEND_TENSION * length / 40;
    for (double place : new double[] {-0.7, -0.2, 0.4, 0.8}) {
      ThreadLaw law = new ThreadLaw.Elastic(40, length);
      double h = 1e-4 * width;
      double x = length + place * width;
      assertEquals(
          law.tension(x), (law.energy(x + h) - law.energy(x - h)) / (2 * h), 1e-5 * law.tension(x));
      assertEquals(
          law.stiffness(x),
          (law.tension(x + h) - law.tension(x - h)) / (2 * h),
          1e-5 * law.stiffness(x));
    }
  }

  @Test
  void lawIsContinuousWithTwoDerivativesAtBothEndsOfTheBlend() {
    ThreadLaw.Elastic law = new ThreadLaw.Elastic(40, 20);
    for (double end : new double[] {20 - law.blend(), 20 + law.blend()}) {
      double before = Math.nextDown(end);
      double after = Math.nextUp(end);
      assertEquals(law.energy(before), law.energy(after), 1e-13);
      assertEquals(law.tension(before), law.tension(after), 1e-12);
      assertEquals(law.stiffness(before), law.stiffness(after), 1e-10);
    }
  }

  @Test
  void slackThreadCarriesNothing() {
    ElasticThread thread = loop();
    thread.tieToLength(1.01 * thread.length(u));
    assertEquals(0, thread.value(0, u));
    assertEquals(0, thread.tension(u));
    assertEquals(0, Shapes.largest(Shapes.gradient(thread, u)));
  }

  @Test
  void tautThreadFollowsHookeExactly() {
    ElasticThread thread = loop();
    double rest = 0.9 * thread.length(u);
    thread.tieToLength(rest);
    double expected = 40 / rest * (thread.length(u) - rest);
    assertEquals(expected, thread.tension(u), 1e-14 * expected);
  }

  @Test
  void everySegmentOfTheLoopPullsWithTheSameTension() {
    int[] vertices = {0, 3, 22, 16};
    ElasticThread thread =
        new ElasticThread(
            "vertices",
            List.of(
                new VertexPoint(0), new VertexPoint(3), new VertexPoint(22), new VertexPoint(16)),
            true,
            40);
    thread.tieToLength(0.8 * thread.length(u));
    double[] force = Shapes.gradient(thread, u);
    double tension = thread.tension(u);
    for (int i = 0; i < 4; i++) {
      double[] here = Vectors.at(u, 3 * vertices[i]);
      double[] next = Vectors.at(u, 3 * vertices[(i + 1) % 4]);
      double[] last = Vectors.at(u, 3 * vertices[(i + 3) % 4]);
      double[] pull = Vectors.unit(Vectors.subtract(here, next));
      pull = Vectors.add(pull, 1, Vectors.unit(Vectors.subtract(here, last)));
      double[] off =
          Vectors.subtract(Vectors.at(force, 3 * vertices[i]), Vectors.scale(tension, pull));
      assertEquals(0, Vectors.norm(off), 1e-7 * tension);
    }
  }

  @Test
  void rigidMotionChangesNothing() {
    ElasticThread thread = loop();
    thread.tieToLength(0.8 * thread.length(u));
    double[] moved = Shapes.rigidlyMoved(u, mesh.vertexCount(), 1.1);
    EnergyTermContract.assertInvariant(thread, u, thread, moved);
  }

  @Test
  void forcesAndMomentsOfALoopBalance() {
    ElasticThread thread = loop();
    thread.tieToLength(0.8 * thread.length(u));
    double[] gradient = Shapes.gradient(thread, u);
    double[] force = new double[3];
    double[] moment = new double[3];
    for (int v = 0; v < mesh.vertexCount(); v++) {
      double[] f = Vectors.at(gradient, 3 * v);
      force = Vectors.add(force, 1, f);
      moment = Vectors.add(moment, 1, Vectors.cross(Vectors.at(u, 3 * v), f));
    }
    assertEquals(0, Vectors.norm(force), 1e-12);
    assertEquals(0, Vectors.norm(moment), 1e-11);
  }

  @Test
  void knotKeepsTensionAndLength() {
    ElasticThread thread = loop();
    thread.pull(1.7);
    thread.knot(u);
    assertEquals(1.7, thread.tension(u), 1e-13);
    assertTrue(thread.law() instanceof ThreadLaw.Elastic);
  }

  @Test
  void restLengthAndPullFollowTheLoadFactor() {
    ElasticThread thread = loop();
    double length = thread.length(u);
    thread.tighten(length, 0.8 * length);
    thread.setLoadFactor(0);
    assertEquals(0, thread.tension(u), ThreadLaw.Elastic.BLEND_TENSION);
    thread.setLoadFactor(0.5);
    assertEquals(40 * 0.1 / 0.9, thread.tension(u), 1e-12);
    thread.pull(3);
    assertEquals(1.5, thread.tension(u));
    thread.knot(u);
    thread.setLoadFactor(1);
    assertEquals(1.5, thread.tension(u), 1e-13, "what is knotted no longer follows");
  }

  @Test
  void coincidentBitesGiveFiniteDerivatives() {
    MaterialPoint bite = new SurfacePoint(mesh, 3, 0.3, 0.3, -0.5);
    ElasticThread thread =
        new ElasticThread("nothing", List.of(bite, bite, new VertexPoint(24)), true, 40);
    thread.tieToLength(0.5 * thread.length(u));
    double[] gradient = new double[thread.stencil(0).length];
    double[] hessian = new double[gradient.length * gradient.length];
    thread.derivatives(0, u, gradient, hessian);
    assertTrue(Double.isFinite(Shapes.largest(gradient)));
    assertTrue(Double.isFinite(Shapes.largest(hessian)));
  }

  @Test
  void aThreadTightenedToNoLengthHasNoEnergy() {
    ElasticThread thread = loop();
    thread.tighten(10, 5);
    thread.setLoadFactor(1.9);
    assertTrue(thread.value(0, u) > 0);
    thread.setLoadFactor(2);
    assertTrue(Double.isNaN(thread.value(0, u)));
  }

  @Test
  void senselessThreadsAreRefused() {
    List<MaterialPoint> one = List.of(new VertexPoint(0));
    assertThrows(IllegalArgumentException.class, () -> new ElasticThread("t", one, false, 1));
    assertThrows(IllegalArgumentException.class, () -> new ElasticThread("t", bites(), true, 0));
    assertThrows(IllegalArgumentException.class, () -> loop().tieToLength(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> loop().pull(-1));
    assertThrows(IllegalArgumentException.class, () -> new SurfacePoint(mesh, 0, 0.7, 0.7, 0));
  }
}
