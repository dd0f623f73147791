package auricle.energy;

import auricle.geometry.SimplexDistance;
import auricle.geometry.Vectors;
import auricle.numerics.Workers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Finds the faces of a surface near vertices, and how far a step may go before a vertex meets one.
 *
 * <p>A pair of vertex and face is listed if it was within the listing distance when the list was
 * made. A listed pair may close its gap, short of touching; any other may not become active within
 * a step. The {@link Workers} present share the vertices; each is looked at by itself, so that what
 * is found does not depend on their number.
 */
final class ContactSearch {
  /** Vertices that one thread looks at before it takes others. */
  private static final int BLOCK = 64;

  private final int[] vertices;

  /** All vertices that can move, those of the surface included. */
  private final int[] moving;

  private final ContactSurface surface;
  private final ContactSettings settings;
  private final ContactBoxes boxes;
  private final BitSet[] excluded;
  private final BitSet[] listed;
  private double[] listedAt;

  ContactSearch(int[] vertices, ContactSurface surface, double[] rest, ContactSettings settings) {
    this.vertices = vertices;
    this.surface = surface;
    this.settings = settings;
    listedAt = rest.clone();
    boxes = new ContactBoxes(surface, rest);
    moving =
        IntStream.concat(
                Arrays.stream(vertices),
                Arrays.stream(surface.moves() ? surface.vertices() : new int[0]))
            .distinct()
            .toArray();
    excluded = new BitSet[vertices.length];
    listed = new BitSet[vertices.length];
    Arrays.setAll(excluded, place -> new BitSet());
    Arrays.setAll(listed, place -> new BitSet());
    if (surface.moves() && settings.restExclusion_mm() > 0) {
      BitSet[] near = within(rest, settings.restExclusion_mm());
      System.arraycopy(near, 0, excluded, 0, near.length);
    }
  }

  /** Lists anew: the pairs near each other at u. */
  List<ContactPairs.Pair> list(double[] u) {
    listedAt = u.clone();
    System.arraycopy(within(u, settings.listing()), 0, listed, 0, listed.length);
    ContactPairs found = new ContactPairs();
    for (int place = 0; place < vertices.length; place++) {
      List<int[]> faces = listed[place].stream().mapToObj(surface::corners).toList();
      found.add(vertices[place], place, faces);
    }
    return found.pairs();
  }

  /**
   * Vertex and corners of the pairs that were within the reserve distance when the list was made.
   */
  List<int[]> reserve() {
    BitSet[] near = within(listedAt, settings.reserve());
    List<int[]> found = new ArrayList<>();
    for (int place = 0; place < vertices.length; place++) {
      int vertex = vertices[place];
      near[place].stream()
          .forEach(t -> found.add(ContactPairs.stencil(vertex, surface.corners(t), surface)));
    }
    return found;
  }

  /**
   * Whether no vertex has moved more than a quarter of the search margin since the list was made.
   */
  boolean listHolds(double[] u) {
    return stayed(u, null, settings.searchMargin_mm() / 4);
  }

  /**
   * Whether at u and on the way to u + direction all is nearer than that to where it was listed.
   */
  private boolean stayed(double[] u, double @Nullable [] direction, double most) {
    for (int v : moving) {
      double here = 0;
      double there = 0;
      for (int c = 3 * v; c < 3 * v + 3; c++) {
        double move = u[c] - listedAt[c];
        double end = direction == null ? move : move + direction[c];
        here += move * move;
        there += end * end;
      }
      if (!(Math.max(here, there) < most * most)) {
        return false;
      }
    }
    return true;
  }

  /** For each vertex the triangles within a distance, without those excluded. */
  private BitSet[] within(double[] u, double reach) {
    boxes.fit(u, null);
    BitSet[] found = new BitSet[vertices.length];
    each(
        place -> {
          BitSet near = new BitSet();
          double[] x = Vectors.at(u, 3 * vertices[place]);
          for (int t : boxes.near(vertices[place], u, null, reach)) {
            boolean maybe = !excluded[place].get(t) && leastDistance(place, t, u) <= reach;
            if (maybe && distance(x, u, t) <= reach) {
              near.set(t);
            }
          }
          found[place] = near;
        });
    return found;
  }

  /** What is done for one vertex. */
  private interface Look {
    void at(int place);
  }

  private void each(Look look) {
    int blocks = (vertices.length + BLOCK - 1) / BLOCK;
    Workers.present()
        .run(
            blocks,
            (block, worker) -> {
              int end = Math.min((block + 1) * BLOCK, vertices.length);
              for (int place = block * BLOCK; place < end; place++) {
                look.at(place);
              }
            });
  }

  private double distance(double[] x, double[] u, int triangle) {
    return new SimplexDistance(x, surface.at(u, surface.corners(triangle))).distance();
  }

  /** A bound from below on the distance of a vertex from a triangle, by those from its corners. */
  private double leastDistance(int place, int triangle, double[] u) {
    double nearest = Double.POSITIVE_INFINITY;
    double widest = 0;
    for (int k = 0; k < 3; k++) {
      int corner = surface.corner(triangle, k);
      nearest = Math.min(nearest, surface.gap(u, vertices[place], corner, false));
      widest = Math.max(widest, surface.edge(u, corner, surface.corner(triangle, (k + 1) % 3)));
    }
    // no point of a triangle is farther from its nearest corner than 1/√3 of the longest edge
    return nearest - widest / Math.sqrt(3);
  }

  /** Safe fraction of the direction, at most 1; infinite if all of it is safe. */
  double largestStep(double[] u, double[] direction) {
    double[] largest = new double[vertices.length];
    // a pair that is not listed was farther apart than reach and margin: two places that have moved
    // by less than half of the margin each are not within reach yet
    if (stayed(u, direction, settings.searchMargin_mm() / 2)) {
      each(place -> largest[place] = largestStep(place, listed[place].stream(), u, direction));
    } else {
      boxes.fit(u, direction);
      each(place -> largest[place] = largestStep(place, near(place, u, direction), u, direction));
    }
    double least = Arrays.stream(largest).min().orElse(1);
    return least < 1 ? least : Double.POSITIVE_INFINITY;
  }

  private IntStream near(int place, double[] u, double[] direction) {
    return Arrays.stream(boxes.near(vertices[place], u, direction, settings.reach()))
        .filter(t -> !excluded[place].get(t));
  }

  private double largestStep(int place, IntStream triangles, double[] u, double[] direction) {
    double largest = 1;
    for (int t : triangles.toArray()) {
      double speed = speed(place, t, direction);
      if (leastDistance(place, t, u) <= settings.reach() + largest * speed) {
        Approach approach = approach(place, t, u, direction, speed);
        boolean mayMeet = approach.distance() <= settings.reach() + largest * speed;
        largest = mayMeet ? Math.min(largest, approach.safe(largest)) : largest;
      }
    }
    return largest;
  }

  /** A bound on how fast a vertex and the points of a triangle may approach. */
  private double speed(int place, int triangle, double[] direction) {
    double speed = 0;
    for (int k = 0; k < 3; k++) {
      int corner = surface.corner(triangle, k);
      speed = Math.max(speed, surface.gap(direction, vertices[place], corner, true));
    }
    return speed;
  }

  private Approach approach(int place, int t, double[] u, double[] direction, double speed) {
    int[] corners = surface.corners(t);
    Approach approach =
        new Approach(
            Vectors.at(u, 3 * vertices[place]),
            Vectors.at(direction, 3 * vertices[place]),
            surface.at(u, corners),
            surface.along(direction, corners),
            speed);
    boolean mayClose = listed[place].get(t) || approach.distance() <= settings.reach();
    approach.keep(mayClose ? settings.separation_mm() : settings.reach());
    return approach;
  }
}
