package auricle.energy;

import auricle.geometry.NearSpheres;
import auricle.geometry.SimplexDistance;
import auricle.geometry.Vectors;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds the faces of a surface near vertices, and how far a step may go before a vertex meets one.
 *
 * <p>A pair of vertex and face is listed if it was within the listing distance when the list was
 * made. A listed pair may close its gap, short of touching; any other may not become active within
 * a step. Steps are bounded by conservative advancement: a pair whose distance exceeds its floor by
 * g and whose points approach at most at speed s is safe for g/s (Li, Kaufman, Jiang 2021, ACM
 * Trans. Graph. 40(4) 170, §5, additive continuous collision detection).
 */
final class ContactSearch {
  /** Share of the present gap that a step leaves open. */
  private static final double LEFT_OPEN = 0.1;

  private static final int MOST_ADVANCES = 200;

  private final int[] vertices;
  private final ContactSurface surface;
  private final ContactSettings settings;
  private final BitSet[] excluded;

  /** All that moves with the shell: the vertices and the corners of its own triangles. */
  private final int[] moving;

  /** Triangles listed with each vertex. */
  private final int[][] near;

  private double[] listedAt;

  ContactSearch(int[] vertices, ContactSurface surface, double[] rest, ContactSettings settings) {
    this.vertices = vertices;
    this.surface = surface;
    this.settings = settings;
    this.listedAt = rest.clone();
    IntStream touched = Arrays.stream(surface.moves() ? surface.vertices() : new int[0]);
    moving = IntStream.concat(Arrays.stream(vertices), touched).distinct().toArray();
    near = new int[vertices.length][0];
    excluded = new BitSet[vertices.length];
    Arrays.setAll(excluded, place -> new BitSet());
    if (surface.moves() && settings.restExclusion_mm() > 0) {
      NearSpheres spheres = spheres(rest, new double[rest.length]);
      for (int place = 0; place < vertices.length; place++) {
        within(place, rest, settings.restExclusion_mm(), spheres).forEach(excluded[place]::set);
      }
    }
  }

  /** Lists anew: the pairs near each other at u. */
  List<ContactPairs.Pair> list(double[] u) {
    listedAt = u.clone();
    ContactPairs found = new ContactPairs();
    NearSpheres spheres = spheres(u, new double[u.length]);
    for (int place = 0; place < vertices.length; place++) {
      near[place] = within(place, u, settings.listing(), spheres).toArray();
      List<int[]> faces = Arrays.stream(near[place]).mapToObj(surface::corners).toList();
      found.add(vertices[place], place, faces);
    }
    return found.pairs();
  }

  /**
   * Whether no vertex has moved more than a quarter of the search margin since the list was made.
   */
  boolean listHolds(double[] u) {
    return farthest(u, new double[0]) < settings.searchMargin_mm() / 4;
  }

  /**
   * How far anything has moved since the list was made, at u or at any place on the way along a
   * direction, mm.
   *
   * @param direction of length 0: none
   */
  private double farthest(double[] u, double[] direction) {
    double square = 0;
    for (int v : moving) {
      double here = 0;
      double there = 0;
      for (int i = 3 * v; i < 3 * v + 3; i++) {
        double move = u[i] - listedAt[i];
        double end = direction.length > 0 ? move + direction[i] : 0;
        here += move * move;
        there += end * end;
      }
      square = Math.max(square, Math.max(here, there));
    }
    return Math.sqrt(square);
  }

  private IntStream within(int place, double[] u, double reach, NearSpheres spheres) {
    double[] x = Vectors.at(u, 3 * vertices[place]);
    return Arrays.stream(spheres.within(reach, x))
        .filter(t -> !excluded[place].get(t) && distance(x, u, t) <= reach)
        .sorted();
  }

  private double distance(double[] x, double[] u, int triangle) {
    return new SimplexDistance(x, surface.at(u, surface.corners(triangle))).distance();
  }

  /** Spheres around the triangles on their way from u to u + direction. */
  private NearSpheres spheres(double[] u, double[] direction) {
    double[][] spheres = new double[surface.triangleCount()][];
    for (int t = 0; t < spheres.length; t++) {
      int[] corners = surface.corners(t);
      double farthest = 0;
      for (double[] move : surface.along(direction, corners)) {
        farthest = Math.max(farthest, Vectors.norm(move));
      }
      spheres[t] = NearSpheres.around(farthest, surface.at(u, corners));
    }
    return new NearSpheres(spheres);
  }

  private static double[][] moved(double[][] from, double t, double[][] along) {
    return new double[][] {
      Vectors.add(from[0], t, along[0]),
      Vectors.add(from[1], t, along[1]),
      Vectors.add(from[2], t, along[2])
    };
  }

  /** Safe fraction of the direction, at most 1; infinite if all of it is safe. */
  double largestStep(double[] u, double[] direction) {
    // a pair that is not listed was farther apart than reach and margin: two places that have moved
    // by half of the margin each are not within reach yet
    boolean listedAlone = 2 * farthest(u, direction) <= settings.searchMargin_mm();
    double largest = listedAlone ? ofListed(u, direction) : ofAll(u, direction);
    return largest < 1 ? largest : Double.POSITIVE_INFINITY;
  }

  private double ofListed(double[] u, double[] direction) {
    double largest = 1;
    for (int place = 0; place < vertices.length; place++) {
      for (int t : near[place]) {
        largest = Math.min(largest, largestStep(place, t, u, direction));
      }
    }
    return largest;
  }

  private double ofAll(double[] u, double[] direction) {
    double largest = 1;
    NearSpheres spheres = spheres(u, direction);
    for (int place = 0; place < vertices.length; place++) {
      double[] x = Vectors.at(u, 3 * vertices[place]);
      double own = Vectors.norm(Vectors.at(direction, 3 * vertices[place]));
      for (int t : spheres.within(settings.reach() + own, x)) {
        if (!excluded[place].get(t) && mayMeet(place, t, u, direction)) {
          largest = Math.min(largest, largestStep(place, t, u, direction));
        }
      }
    }
    return largest;
  }

  /** Whether a vertex may come within reach of a triangle, by the distance from its corners. */
  private boolean mayMeet(int place, int triangle, double[] u, double[] direction) {
    double speed = 0;
    double nearest = Double.POSITIVE_INFINITY;
    double widest = 0;
    int vertex = vertices[place];
    for (int k = 0; k < 3; k++) {
      int corner = surface.corner(triangle, k);
      speed = Math.max(speed, surface.gap(direction, vertex, corner, true));
      nearest = Math.min(nearest, surface.gap(u, vertex, corner, false));
      widest = Math.max(widest, surface.edge(u, corner, surface.corner(triangle, (k + 1) % 3)));
    }
    // no point of a triangle is farther from its nearest corner than 1/√3 of the longest edge
    return nearest - widest / Math.sqrt(3) <= settings.reach() + speed;
  }

  private double largestStep(int place, int triangle, double[] u, double[] direction) {
    double[] x = Vectors.at(u, 3 * vertices[place]);
    double[] v = Vectors.at(direction, 3 * vertices[place]);
    int[] corners = surface.corners(triangle);
    double[][] from = surface.at(u, corners);
    double[][] along = surface.along(direction, corners);
    double speed = 0;
    for (double[] w : along) {
      speed = Math.max(speed, Vectors.norm(Vectors.subtract(v, w)));
    }
    double now = new SimplexDistance(x, from).distance();
    if (now - settings.reach() > speed) {
      return 1;
    }
    double[] then = Vectors.at(listedAt, 3 * vertices[place]);
    boolean listed = distance(then, listedAt, triangle) <= settings.listing();
    boolean mayClose = listed || now <= settings.reach();
    double floor = mayClose ? settings.separation_mm() : settings.reach();
    return advance(x, v, from, along, speed, floor, now - floor);
  }

  /**
   * @param speed bound on the approach over the whole step
   * @param floor distance that must be left over
   * @param now distance less floor at the start
   */
  private static double advance(
      double[] x,
      double[] v,
      double[][] corners,
      double[][] along,
      double speed,
      double floor,
      double now) {
    double left = now;
    double t = 0;
    for (int k = 0; k < MOST_ADVANCES && speed > 0 && t < 1; k++) {
      double spare = left - LEFT_OPEN * now;
      t += Math.max(spare, 0) / speed;
      if (spare <= LEFT_OPEN * now) {
        return t;
      }
      left = new SimplexDistance(Vectors.add(x, t, v), moved(corners, t, along)).distance() - floor;
    }
    return speed > 0 ? t : 1;
  }
}
