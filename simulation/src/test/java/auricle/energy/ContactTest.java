package auricle.energy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.mesh.Topology;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ContactTest {
  private static final BarrierLaw LAW = new BarrierLaw(0.4, 2);
  private static final int N = 3;
  private static final int V = (N + 1) * (N + 1);
  private static final double SEPARATION = 0.3;

  /** Two grids one over the other: vertices 0 … V − 1 below in z = 0, V … 2 V − 1 above. */
  private static double[] twoSheets(double height, double slide) {
    double[] u = new double[6 * V];
    double[] flat = Shapes.flat(N, N);
    for (int i = 0; i < 3 * V; i++) {
      u[i] = flat[i];
      u[3 * V + i] = flat[i] + (i % 3 == 2 ? height : slide);
    }
    return u;
  }

  private static SurfaceContact upperOnLower(double[] start) {
    int[] upper = IntStream.range(V, 2 * V).toArray();
    double[] areas = new double[V];
    Arrays.fill(areas, 0.7);
    SurfaceContact contact =
        new SurfaceContact(
            "sheets",
            upper,
            areas,
            ContactSurface.moving(Shapes.grid(N, N).triangles()),
            twoSheets(5, 0.3),
            ContactSettings.usual(LAW, SEPARATION));
    contact.update(start);
    return contact;
  }

  @Test
  void barrierLawHasContinuousDerivativesAndItsStatedScale() {
    assertEquals(2, LAW.pressure(0.2), 1e-14);
    for (double gap : new double[] {0.01, 0.1, 0.3, 0.399}) {
      double h = 1e-6 * gap;
      double slope = (LAW.energy(gap + h) - LAW.energy(gap - h)) / (2 * h);
      double bend = (LAW.pressure(gap + h) - LAW.pressure(gap - h)) / (2 * h);
      assertEquals(-LAW.pressure(gap), slope, 1e-7 * LAW.pressure(0.1));
      assertEquals(-LAW.stiffness(gap), bend, 1e-6 * LAW.stiffness(gap));
    }
    assertEquals(0, LAW.energy(0.4 * (1 - 1e-9)), 1e-24);
    assertEquals(0, LAW.stiffness(0.4 * (1 - 1e-9)), 1e-6);
    assertEquals(0, LAW.energy(0.4));
    assertEquals(Double.POSITIVE_INFINITY, LAW.energy(0));
  }

  @Test
  void derivativesOfObstacleContactAreExact() {
    double[] u = Shapes.shaken(Shapes.flat(2, 2), 0.05, 3);
    Obstacle[] bodies = {
      new PlaneObstacle(new double[] {0, 0, -0.4}, new double[] {0.02, -0.01, 1}),
      new SphereObstacle(new double[] {1, 1, -20.3}, 20),
      new EllipsoidObstacle(new double[] {1, 1, -8.3}, new double[] {20, 30, 8})
    };
    for (Obstacle body : bodies) {
      ObstacleContact contact = contact(body, 9, 0.1);
      assertEquals(-1, contact.firstViolation(u));
      assertTrue(Shapes.energy(contact, u) > 0);
      EnergyTermContract.assertExact(contact, u);
    }
  }

  private static ObstacleContact contact(Obstacle body, int vertices, double offset) {
    double[] areas = new double[vertices];
    double[] offsets = new double[vertices];
    Arrays.fill(areas, 0.8);
    Arrays.fill(offsets, offset);
    int[] all = IntStream.range(0, vertices).toArray();
    return new ObstacleContact("body", body, LAW, all, areas, offsets);
  }

  @Test
  void ellipsoidOfEqualAxesIsASphere() {
    double[] centre = {1, 2, 3};
    Obstacle ellipsoid = new EllipsoidObstacle(centre, new double[] {5, 5, 5});
    Obstacle sphere = new SphereObstacle(centre, 5);
    double[] x = {7, -1, 9};
    double[] g1 = new double[3];
    double[] g2 = new double[3];
    double[] h1 = new double[9];
    double[] h2 = new double[9];
    double d1 = ellipsoid.derivatives(x, g1, h1);
    assertEquals(sphere.derivatives(x, g2, h2), d1, 1e-12);
    for (int i = 0; i < 9; i++) {
      assertEquals(h2[i], h1[i], 1e-12);
      assertEquals(g2[i / 3], g1[i / 3], 1e-12);
    }
  }

  @Test
  void ellipsoidDistanceIsThatOfTheClosestOfManySurfacePoints() {
    Obstacle body = new EllipsoidObstacle(new double[3], new double[] {3, 1, 2});
    double[] x = {2.5, 1.4, -1.1};
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 4000; i++) {
      for (int j = 0; j < 2000; j++) {
        double a = 2 * Math.PI * i / 4000;
        double b = Math.PI * j / 2000;
        double dx = 3 * Math.cos(a) * Math.sin(b) - x[0];
        double dy = Math.sin(a) * Math.sin(b) - x[1];
        double dz = 2 * Math.cos(b) - x[2];
        best = Math.min(best, dx * dx + dy * dy + dz * dz);
      }
    }
    assertEquals(Math.sqrt(best), body.distance(x), 2e-6);
    assertTrue(body.distance(new double[] {0.5, 0.3, 0.2}) < 0);
  }

  @Test
  void weightOnAPlaneSettlesWhereTheLawBearsIt() {
    Obstacle plane = new PlaneObstacle(new double[3], new double[] {0, 0, 1});
    ObstacleContact contact = contact(plane, 1, 0.5);
    double weight = 1.6;
    double[] u = {0, 0, 2};
    double[] gradient = new double[3];
    double[] hessian = new double[9];
    for (int i = 0; i < 60; i++) {
      contact.derivatives(0, u, gradient, hessian);
      double step = -(gradient[2] + weight) / Math.max(hessian[8], 1);
      double[] direction = {0, 0, step};
      u[2] += step * Math.min(1, contact.largestStep(u, direction));
    }
    assertEquals(weight, contact.force(0, u), 1e-10);
    assertEquals(0.5 + 0.2, u[2], 1e-10, "1.6 N on 0.8 mm² is the pressure at half the gap");
  }

  @Test
  void stepTowardsAnObstacleStopsAtATenthOfTheGap() {
    double[] u = {0, 0, 3};
    double[] down = {0, 0, -10};
    ObstacleContact plane =
        contact(new PlaneObstacle(new double[3], new double[] {0, 0, 2}), 1, 0.5);
    assertEquals(0.225, plane.largestStep(u, down), 1e-12);
    assertEquals(Double.POSITIVE_INFINITY, plane.largestStep(u, new double[] {9, 0, 9}));
    ObstacleContact sphere = contact(new SphereObstacle(new double[] {0.4, 0, -3}, 3), 1, 0.5);
    double t = sphere.largestStep(u, down);
    assertEquals(0.1 * sphere.gap(0, u), sphere.gap(0, new double[] {0, 0, 3 - 10 * t}), 1e-5);
    double[] past = {10, 0, -1};
    assertEquals(Double.POSITIVE_INFINITY, sphere.largestStep(u, past), "it passes by");
  }

  @Test
  void startInsideAnObstacleIsFoundAndHasNoFiniteEnergy() {
    ObstacleContact contact = contact(new SphereObstacle(new double[3], 3), 1, 0.5);
    double[] inside = {0, 0, 3.4};
    assertEquals(0, contact.firstViolation(inside));
    assertEquals(Double.POSITIVE_INFINITY, contact.value(0, inside));
    assertEquals(0, contact.largestStep(inside, new double[] {0, 0, -1}));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.31, 0.5, -0.35})
  void derivativesOfSurfaceContactAreExact(double slide) {
    double[] u = Shapes.shaken(twoSheets(0.5, slide), 0.05, 11);
    SurfaceContact contact = upperOnLower(u);
    assertTrue(Shapes.energy(contact, u) > 0);
    EnergyTermContract.assertExact(contact, u);
  }

  @Test
  void flatSheetsPressAsOneGapWhateverFacesAreNear() {
    double gap = 0.15;
    for (double slide : new double[] {0, 0.25, 0.5}) {
      double[] u = twoSheets(SEPARATION + gap, slide);
      SurfaceContact contact = upperOnLower(u);
      double over = 0;
      double[] gradient = Shapes.gradient(contact, u);
      for (int v = V; v < 2 * V; v++) {
        if (u[3 * v] <= N && u[3 * v + 1] <= N) {
          over++;
          assertEquals(-0.7 * LAW.pressure(gap), gradient[3 * v + 2], 1e-12);
        }
      }
      assertTrue(Shapes.energy(contact, u) >= 0.7 * over * LAW.energy(gap) - 1e-12);
    }
  }

  @Test
  void flatTrianglesActLikeThePlaneTheyLieIn() {
    double[] u = Shapes.shaken(Shapes.flat(N, N), 0.05, 2);
    double[] floor = Shapes.flat(2 * N, 2 * N);
    for (int v = 0; v < floor.length / 3; v++) {
      floor[3 * v] -= 1.3;
      floor[3 * v + 1] -= 1.6;
      floor[3 * v + 2] = -0.5;
    }
    double[] areas = new double[V];
    Arrays.fill(areas, 0.8);
    SurfaceContact triangles =
        new SurfaceContact(
            "triangles",
            IntStream.range(0, V).toArray(),
            areas,
            ContactSurface.fixed(Shapes.grid(2 * N, 2 * N).triangles(), floor),
            u,
            ContactSettings.usual(LAW, SEPARATION));
    Obstacle plane = new PlaneObstacle(new double[] {0, 0, -0.5}, new double[] {0, 0, 1});
    ObstacleContact smooth = contact(plane, V, SEPARATION);
    double energy = Shapes.energy(smooth, u);
    assertTrue(energy > 0);
    assertEquals(energy, Shapes.energy(triangles, u), 1e-12 * energy);
    double[] expected = Shapes.gradient(smooth, u);
    double[] found = Shapes.gradient(triangles, u);
    for (int k = 0; k < 3 * V; k++) {
      assertEquals(expected[k], found[k], 1e-12 * Shapes.largest(expected));
    }
  }

  /**
   * Analytic: on a sphere of radius R the area between two heights is 2 π R times their difference,
   * so a law w over a gap g at the pole presses a rigid sphere off a plane with F = 2 π R w(g).
   */
  @Test
  void rigidSphereIsPressedOffAPlaneWithTwoPiRTimesTheEnergyPerArea() {
    int points = 400_000;
    double radius = 10;
    double gap = 0.1;
    double[] u = new double[3 * points];
    for (int i = 0; i < points; i++) {
      double z = 1 - (2 * i + 1.0) / points;
      double around = Math.PI * (1 + Math.sqrt(5)) * i;
      u[3 * i] = radius * Math.sqrt(1 - z * z) * Math.cos(around);
      u[3 * i + 1] = radius * Math.sqrt(1 - z * z) * Math.sin(around);
      u[3 * i + 2] = radius * z + radius + gap + 0.5;
    }
    double[] areas = new double[points];
    double[] offsets = new double[points];
    Arrays.fill(areas, 4 * Math.PI * radius * radius / points);
    Arrays.fill(offsets, 0.5);
    Obstacle plane = new PlaneObstacle(new double[3], new double[] {0, 0, 1});
    int[] all = IntStream.range(0, points).toArray();
    ObstacleContact contact = new ObstacleContact("plane", plane, LAW, all, areas, offsets);
    double force = 0;
    for (int i = 0; i < points; i++) {
      force += contact.force(i, u);
    }
    double expected = 2 * Math.PI * radius * LAW.energy(gap);
    assertEquals(expected, force, 1e-6 * expected);
  }

  @Test
  void rigidMotionChangesNothingAndForcesBalance() {
    double[] u = Shapes.shaken(twoSheets(0.5, 0.3), 0.05, 5);
    SurfaceContact contact = upperOnLower(u);
    double[] moved = Shapes.rigidlyMoved(u, 2 * V, 0.7);
    EnergyTermContract.assertInvariant(contact, u, contact, moved);
    double[] gradient = Shapes.gradient(contact, u);
    for (int a = 0; a < 3; a++) {
      double sum = 0;
      for (int i = a; i < gradient.length; i += 3) {
        sum += gradient[i];
      }
      assertEquals(0, sum, 1e-12 * Shapes.largest(gradient));
    }
  }

  @Test
  void energyIsTheSameFromEitherListAndTheVersionTellsOfTheChange() {
    double[] near = Shapes.shaken(twoSheets(0.5, 0.3), 0.05, 5);
    double[] further = near.clone();
    for (int v = V; v < 2 * V; v++) {
      further[3 * v] += 1.2;
    }
    SurfaceContact contact = upperOnLower(near);
    int version = contact.stencilVersion();
    contact.update(near);
    assertEquals(version, contact.stencilVersion());
    contact.update(further);
    assertFalse(version == contact.stencilVersion());
    assertEquals(
        Shapes.energy(upperOnLower(further), further), Shapes.energy(contact, further), 1e-15);
  }

  @Test
  void noStepPassesThroughEvenFromFarAway() {
    double[] u = Shapes.shaken(twoSheets(30, 0.3), 0.05, 5);
    double[] direction = new double[u.length];
    for (int v = V; v < 2 * V; v++) {
      direction[3 * v + 2] = -60;
    }
    SurfaceContact contact = upperOnLower(u);
    for (int i = 0; i < 8; i++) {
      double t = contact.largestStep(u, direction);
      assertTrue(t > 0 && t < 1, "stopped before the sheet");
      for (int k = 0; k < u.length; k++) {
        u[k] += t * direction[k];
      }
      double listedEnergy = Shapes.energy(contact, u);
      contact.update(u);
      assertEquals(listedEnergy, Shapes.energy(contact, u), 1e-12 * listedEnergy);
      assertTrue(contact.smallestGap(u) > 0);
    }
    double[] away = direction.clone();
    for (int k = 0; k < away.length; k++) {
      away[k] = -away[k];
    }
    assertEquals(Double.POSITIVE_INFINITY, contact.largestStep(u, away));
  }

  @Test
  void loadedSheetComesToRestOnABeddedOneAndTheContactBearsTheLoad() {
    double[] rest = twoSheets(3, 0.3);
    int[] lower = IntStream.range(0, V).toArray();
    int[] upper = IntStream.range(V, 2 * V).toArray();
    double[] areas = new double[V];
    Arrays.fill(areas, 0.7);
    double[] up = new double[3 * V];
    IntStream.range(0, V).forEach(v -> up[3 * v + 2] = 1);
    SurfaceContact contact = upperOnLower(rest);
    ElasticAttachment bed = ElasticAttachment.isotropic("bed", lower, areas, rest, 5);
    ElasticAttachment guide = new ElasticAttachment("guide", upper, areas, up, rest, 0.01, 1);
    DeadLoad.Builder builder = new DeadLoad.Builder(new Topology(2 * V, new int[0]), rest);
    for (int v : upper) {
      if (rest[3 * v] <= N && rest[3 * v + 1] <= N) {
        builder.onVertex(v, new double[] {0, 0, -0.5});
      }
    }
    DeadLoad load = builder.build("load");
    double[] u = rest.clone();
    int version = contact.stencilVersion();
    int iterations = SmallNewton.solve(u, 1e-9, contact, bed, guide, load);
    assertTrue(iterations < 60, iterations + " iterations");
    assertTrue(contact.stencilVersion() > version, "pairs were found on the way");
    double bedForce = 0;
    double guideForce = 0;
    for (int v = 0; v < V; v++) {
      bedForce += Shapes.gradient(bed, u)[3 * v + 2];
      guideForce += Shapes.gradient(guide, u)[3 * (V + v) + 2];
    }
    assertEquals(load.resultant()[2], bedForce + guideForce, 1e-8);
    assertTrue(bedForce < 0.9 * load.resultant()[2], "the bed carries most of it");
    assertTrue(contact.smallestGap(u) > 0 && contact.smallestGap(u) < LAW.activation_mm());
  }

  /** Steps for which the list is enough, steps just too long for that, and far longer ones. */
  @ParameterizedTest
  @CsvSource({"0.5, 0.05, 0.11", "1.2, 0.05, 0.4", "1.4, 0.3, 4"})
  void noSampleOfASafeStepIsEverOutsideTheDomain(double height, double shaken, double size) {
    for (int seed = 0; seed < 40; seed++) {
      double[] u = Shapes.shaken(twoSheets(height, 0.3), shaken, seed);
      double[] direction = Shapes.shaken(new double[u.length], size, 1000 + seed);
      SurfaceContact contact = upperOnLower(u);
      double t = Math.min(1, contact.largestStep(u, direction));
      assertTrue(t > 1e-3);
      for (int sample = 1; sample <= 20; sample++) {
        double[] there = u.clone();
        for (int k = 0; k < u.length; k++) {
          there[k] += t * sample / 20 * direction[k];
        }
        double energy = Shapes.energy(contact, there);
        assertTrue(Double.isFinite(energy), "seed " + seed);
        assertEquals(Shapes.energy(upperOnLower(there), there), energy, 1e-12 * energy);
      }
    }
  }

  @Test
  void neighboursAlongTheSheetNeverTouch() {
    double[] u = Shapes.flat(N, N);
    int[] all = IntStream.range(0, V).toArray();
    double[] areas = new double[V];
    Arrays.fill(areas, 1);
    SurfaceContact self =
        new SurfaceContact(
            "self",
            all,
            areas,
            ContactSurface.moving(Shapes.grid(N, N).triangles()),
            u,
            ContactSettings.usual(LAW, SEPARATION));
    assertEquals(0, Shapes.energy(self, u));
    double[] folded = u.clone();
    for (int v = 0; v < V; v++) {
      if (u[3 * v] > 1.5) {
        folded[3 * v] = 3 - u[3 * v] + 0.2;
        folded[3 * v + 2] = 0.5;
      }
    }
    self.update(folded);
    assertTrue(Shapes.energy(self, folded) > 0, "folded over, it does");
    EnergyTermContract.assertExact(self, Shapes.shaken(folded, 0.02, 1));
  }

  @Test
  void derivativesOfContactWithAFixedSurfaceAreExact() {
    double[] u = Shapes.shaken(Shapes.flat(N, N), 0.05, 2);
    double[] floor = Shapes.flat(N, N);
    for (int v = 0; v < V; v++) {
      floor[3 * v] += 0.2;
      floor[3 * v + 2] = -0.5;
    }
    double[] areas = new double[V];
    Arrays.fill(areas, 1);
    SurfaceContact contact =
        new SurfaceContact(
            "floor",
            IntStream.range(0, V).toArray(),
            areas,
            ContactSurface.fixed(Shapes.grid(N, N).triangles(), floor),
            u,
            ContactSettings.usual(LAW, SEPARATION));
    assertTrue(Shapes.energy(contact, u) > 0);
    assertEquals(3, contact.stencil(0).length);
    EnergyTermContract.assertExact(contact, u);
  }

  @Test
  void senselessSettingsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new BarrierLaw(0, 1));
    assertThrows(IllegalArgumentException.class, () -> new ContactSettings(LAW, 1, 0.5, 1));
    assertThrows(IllegalArgumentException.class, () -> new SphereObstacle(new double[3], 0));
  }
}
