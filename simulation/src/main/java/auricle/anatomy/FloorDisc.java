package auricle.anatomy;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;

/** The floor of the bowl as rings around its middle, with fewer vertices the smaller they are. */
final class FloorDisc {
  private static final double[] SHARE = {0, 0.2, 0.42, 0.65, 0.84, 1};
  private static final double[] COUNT = {0, 0.12, 0.25, 0.45, 0.7, 1};
  private final AuricleSurface surface;
  private final int division;
  private final MeshVertices vertices;
  private final List<int[]> triangles;

  FloorDisc(AuricleSurface surface, int division, MeshVertices vertices, List<int[]> triangles) {
    this.surface = surface;
    this.division = division;
    this.vertices = vertices;
    this.triangles = triangles;
  }

  /** Fills the disc within the foot line. */
  void fill(List<Integer> foot) {
    List<Integer> outer = closed(foot);
    for (int k = SHARE.length - 2; k >= 0; k--) {
      for (int part = division - 1; part >= 0; part--) {
        double index = k + (double) part / division;
        List<Integer> inner = ring(index);
        zip(inner, outer);
        outer = inner;
      }
    }
  }

  private static List<Integer> closed(List<Integer> ring) {
    List<Integer> closed = new ArrayList<>(ring);
    if (ring.size() > 1) {
      closed.add(ring.get(0));
    }
    return closed;
  }

  private List<Integer> ring(double index) {
    double[] steps = {0, 1, 2, 3, 4, 5};
    double share = new LinearInterpolator().interpolate(steps, SHARE).value(index);
    double part = new LinearInterpolator().interpolate(steps, COUNT).value(index);
    ColumnPlaces places = ColumnPlaces.shipped();
    int n = Math.max(1, (int) Math.round(division * places.count() * part));
    List<Integer> ring = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      ring.add(vertices.add(surface.slice(places.around(i, n)), share * Section.FOOT));
    }
    return closed(ring);
  }

  /** Both rings start at around 0; the one whose next step ends first goes on. */
  private void zip(List<Integer> inner, List<Integer> outer) {
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
