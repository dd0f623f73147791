package auricle.energy;

import auricle.geometry.BoxHash;
import auricle.geometry.SimplexDistance;
import auricle.geometry.Vectors;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

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
  private final List<Set<Integer>> excluded = new ArrayList<>();
  private double[] listedAt;

  ContactSearch(int[] vertices, ContactSurface surface, double[] rest, ContactSettings settings) {
    this.vertices = vertices;
    this.surface = surface;
    this.settings = settings;
    this.listedAt = rest.clone();
    while (excluded.size() < vertices.length) {
      excluded.add(new HashSet<>());
    }
    if (surface.moves() && settings.restExclusion_mm() > 0) {
      BoxHash hash = new BoxHash(boxes(rest, new double[rest.length], settings.restExclusion_mm()));
      for (int place = 0; place < vertices.length; place++) {
        excluded.get(place).addAll(within(place, rest, settings.restExclusion_mm(), hash));
      }
    }
  }

  /** Lists anew: the pairs near each other at u. */
  List<ContactPairs.Pair> list(double[] u) {
    listedAt = u.clone();
    ContactPairs found = new ContactPairs();
    BoxHash hash = new BoxHash(boxes(u, new double[u.length], settings.listing()));
    for (int place = 0; place < vertices.length; place++) {
      List<int[]> faces =
          within(place, u, settings.listing(), hash).stream().map(surface::corners).toList();
      found.add(vertices[place], place, faces);
    }
    return found.pairs();
  }

  /**
   * Whether no vertex has moved more than a quarter of the search margin since the list was made.
   */
  boolean listHolds(double[] u) {
    double farthest = 0;
    int[] touched = surface.moves() ? surface.vertices() : new int[0];
    for (int[] group : new int[][] {vertices, touched}) {
      for (int v : group) {
        double[] move = Vectors.subtract(Vectors.at(u, 3 * v), Vectors.at(listedAt, 3 * v));
        farthest = Math.max(farthest, Vectors.norm(move));
      }
    }
    return farthest < settings.searchMargin_mm() / 4;
  }

  private List<Integer> within(int place, double[] u, double reach, BoxHash hash) {
    double[] x = Vectors.at(u, 3 * vertices[place]);
    return hash.overlapping(BoxHash.around(0, x)).stream()
        .filter(t -> !excluded.get(place).contains(t) && distance(x, u, t) <= reach)
        .toList();
  }

  private double distance(double[] x, double[] u, int triangle) {
    return new SimplexDistance(x, surface.at(u, surface.corners(triangle))).distance();
  }

  /** Boxes around the triangles on their way from u to u + direction. */
  private double[][] boxes(double[] u, double[] direction, double margin) {
    double[][] boxes = new double[surface.triangleCount()][];
    for (int t = 0; t < boxes.length; t++) {
      double[][] from = surface.at(u, surface.corners(t));
      double[][] along = surface.along(direction, surface.corners(t));
      double[][] to = moved(from, 1, along);
      boxes[t] = BoxHash.around(margin, from[0], from[1], from[2], to[0], to[1], to[2]);
    }
    return boxes;
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
    double largest = 1;
    BoxHash hash = new BoxHash(boxes(u, direction, settings.reach()));
    for (int place = 0; place < vertices.length; place++) {
      double[] x = Vectors.at(u, 3 * vertices[place]);
      double[] v = Vectors.at(direction, 3 * vertices[place]);
      for (int t : hash.overlapping(BoxHash.around(0, x, Vectors.add(x, 1, v)))) {
        if (!excluded.get(place).contains(t)) {
          largest = Math.min(largest, largestStep(place, t, u, direction));
        }
      }
    }
    return largest < 1 ? largest : Double.POSITIVE_INFINITY;
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
