package auricle.energy;

import auricle.geometry.BoxTree;
import org.jspecify.annotations.Nullable;

/**
 * Boxes around the triangles of a surface on their way along a direction, and those that a vertex
 * on its own way may come near.
 */
final class ContactBoxes {
  private final ContactSurface surface;
  private final double[] boxes;
  private final BoxTree tree;

  /**
   * @param rest unknowns by which the tree of boxes is made
   */
  ContactBoxes(ContactSurface surface, double[] rest) {
    this.surface = surface;
    boxes = new double[6 * surface.triangleCount()];
    fill(rest, null);
    tree = new BoxTree(boxes);
  }

  /** Follows the triangles to u, with all they pass through on the way to u + direction. */
  void fit(double[] u, double @Nullable [] direction) {
    fill(u, direction);
    tree.fit(boxes);
  }

  private void fill(double[] u, double @Nullable [] direction) {
    double[] source = surface.coordinates(u);
    double[] along = surface.moves() ? direction : null;
    for (int t = 0; t < surface.triangleCount(); t++) {
      clear(boxes, 6 * t);
      for (int k = 0; k < 3; k++) {
        widen(boxes, 6 * t, source, along, surface.corner(t, k));
      }
    }
  }

  private static void clear(double[] box, int at) {
    for (int a = 0; a < 3; a++) {
      box[at + a] = Double.POSITIVE_INFINITY;
      box[at + 3 + a] = Double.NEGATIVE_INFINITY;
    }
  }

  private static void widen(
      double[] box, int at, double[] from, double @Nullable [] along, int vertex) {
    for (int a = 0; a < 3; a++) {
      double here = from[3 * vertex + a];
      double there = along == null ? here : here + along[3 * vertex + a];
      box[at + a] = Math.min(box[at + a], Math.min(here, there));
      box[at + 3 + a] = Math.max(box[at + 3 + a], Math.max(here, there));
    }
  }

  /** Triangles whose boxes a vertex may come as near as a reach, on its way from u. */
  int[] near(int vertex, double[] u, double @Nullable [] direction, double reach) {
    double[] box = new double[6];
    clear(box, 0);
    widen(box, 0, u, direction, vertex);
    for (int a = 0; a < 3; a++) {
      box[a] -= reach;
      box[3 + a] += reach;
    }
    return tree.touching(box);
  }
}
