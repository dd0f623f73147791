package auricle.anatomy;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;

/** The floor of the bowl as rings around its middle, with fewer vertices the smaller they are. */
final class FloorDisc {
  private static final double[] STEPS = {0, 1, 2, 3, 4, 5};
  private static final double[] SHARE = {0, 0.2, 0.42, 0.65, 0.84, 1};
  private static final double[] COUNT = {0, 0.12, 0.25, 0.45, 0.7, 1};
  private final List<Ring> rings = new ArrayList<>();

  /**
   * A ring.
   *
   * @param across its place across
   * @param around places of its vertices
   */
  private record Ring(double across, List<Double> around) {}

  FloorDisc(ColumnPlaces places, int division) {
    for (int k = STEPS.length - 2; k >= 0; k--) {
      for (int part = division - 1; part >= 0; part--) {
        rings.add(ring(places, division, k + (double) part / division));
      }
    }
  }

  private static Ring ring(ColumnPlaces places, int division, double index) {
    double share = new LinearInterpolator().interpolate(STEPS, SHARE).value(index);
    double part = new LinearInterpolator().interpolate(STEPS, COUNT).value(index);
    int n = Math.max(1, (int) Math.round(division * places.count() * part));
    List<Double> around = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      around.add(places.around(i, n));
    }
    return new Ring(share * Section.FOOT, around);
  }

  /** Adds the vertices of all rings, the outermost first, the middle last. */
  void addVertices(AuricleSurface surface, MeshVertices vertices) {
    for (Ring ring : rings) {
      for (double around : ring.around()) {
        FloorSpot spot = surface.floorSpot(around, ring.across());
        vertices.add(around, ring.across(), spot.point(), spot.normal());
      }
    }
  }

  /**
   * Adds the triangles within the foot line.
   *
   * @param foot vertices of the foot line
   * @param first number of the first vertex of the disc
   */
  void join(List<Integer> foot, int first, List<int[]> triangles) {
    List<Integer> outer = closed(foot);
    int next = first;
    for (Ring ring : rings) {
      List<Integer> inner = new ArrayList<>();
      for (int i = 0; i < ring.around().size(); i++) {
        inner.add(next++);
      }
      inner = closed(inner);
      zip(inner, outer, triangles);
      outer = inner;
    }
  }

  private static List<Integer> closed(List<Integer> ring) {
    List<Integer> closed = new ArrayList<>(ring);
    if (ring.size() > 1) {
      closed.add(ring.get(0));
    }
    return closed;
  }

  /** Both rings start at around 0; the one whose next step ends first goes on. */
  private static void zip(List<Integer> inner, List<Integer> outer, List<int[]> triangles) {
    int i = 0;
    int k = 0;
    while (i < inner.size() - 1 || k < outer.size() - 1) {
      boolean onOuter =
          k < outer.size() - 1 && (i == inner.size() - 1 || middle(outer, k) < middle(inner, i));
      int a = inner.get(i);
      int b = outer.get(k);
      int next = onOuter ? outer.get(++k) : inner.get(++i);
      triangles.add(new int[] {a, b, next});
    }
  }

  private static double middle(List<Integer> ring, int i) {
    return (i + 0.5) / (ring.size() - 1);
  }
}
