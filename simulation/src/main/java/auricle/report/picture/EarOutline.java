package auricle.report.picture;

import auricle.rehearsal.DeformedEar;
import auricle.rehearsal.Position;
import auricle.report.drawing.Ink;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What one sees of an ear from one side: its surface in the light, its contours (edges where the
 * surface turns away or ends) and landmark lines, each without what is hidden. In mm across and up.
 */
final class EarOutline {
  private static final double TOLERANCE_MM = 0.9;
  private static final double PIECE_MM = 0.6;
  private static final double BESIDE_MM = 0.25;

  /** Direction of the light: across, up, towards the viewer; length 1. */
  private static final double[] LIGHT = {-0.45, 0.55, 0.70};

  private final double[] seen;
  private final int[] triangles;
  private final DepthGrid depths;

  EarOutline(DeformedEar ear, View view, double mirror) {
    this.seen = view.seen(ear.points(), mirror);
    this.triangles = ear.triangles();
    double[] normals = view.seen(ear.normals(), mirror);
    this.depths = new DepthGrid(seen, triangles, light(normals));
  }

  /** Twice the signed area of a triangle as it is seen. */
  private double facing(int t) {
    int a = 3 * triangles[t];
    int b = 3 * triangles[t + 1];
    int c = 3 * triangles[t + 2];
    return (seen[b] - seen[a]) * (seen[c + 1] - seen[a + 1])
        - (seen[b + 1] - seen[a + 1]) * (seen[c] - seen[a]);
  }

  /** The surface as the light shows it, clear where there is none of it. */
  BufferedImage shaded(Ink dark, Ink light) {
    int type = BufferedImage.TYPE_INT_ARGB;
    BufferedImage image = new BufferedImage(depths.columns(), depths.rows(), type);
    for (int j = 0; j < depths.rows(); j++) {
      for (int i = 0; i < depths.columns(); i++) {
        float share = depths.light(i, j);
        if (!Float.isNaN(share)) {
          image.setRGB(i, depths.rows() - 1 - j, mixed(dark, light, share));
        }
      }
    }
    return image;
  }

  private static int mixed(Ink dark, Ink light, float share) {
    int red = Math.round(dark.red() + share * (light.red() - dark.red()));
    int green = Math.round(dark.green() + share * (light.green() - dark.green()));
    int blue = Math.round(dark.blue() + share * (light.blue() - dark.blue()));
    return 0xff << 24 | red << 16 | green << 8 | blue;
  }

  /** Left edge of the shaded picture. */
  double left() {
    return depths.left() - DepthGrid.CELL_MM / 2;
  }

  /** Upper edge of the shaded picture. */
  double top() {
    return depths.top() + DepthGrid.CELL_MM / 2;
  }

  /** Share of the light on each vertex, on the side that is seen. */
  private static float[] light(double[] normals) {
    float[] light = new float[normals.length / 3];
    for (int v = 0; v < light.length; v++) {
      double sign = normals[3 * v + 2] < 0 ? -1 : 1;
      double cosine = 0;
      for (int k = 0; k < 3; k++) {
        cosine += sign * normals[3 * v + k] * LIGHT[k];
      }
      light[v] = (float) Math.max(0, Math.min(1, 0.5 + 0.5 * cosine));
    }
    return light;
  }

  /** The contours that show. */
  Path2D contours() {
    Path2D lines = new Path2D.Double();
    edges((a, b) -> showing(lines, at(a), at(b), false));
    return lines;
  }

  /** The outermost line around everything, for a ghost without inner contours. */
  Path2D silhouette() {
    Path2D lines = new Path2D.Double();
    edges((a, b) -> showing(lines, at(a), at(b), true));
    return lines;
  }

  /** Goes through the edges at which the surface turns away from the viewer, or ends. */
  private void edges(EdgeVisitor visitor) {
    Map<Long, Integer> open = new TreeMap<>();
    for (int t = 0; t < triangles.length; t += 3) {
      int side = facing(t) < 0 ? -1 : 1;
      for (int c = 0; c < 3; c++) {
        int a = triangles[t + c];
        int b = triangles[t + (c + 1) % 3];
        long key = ((long) Math.min(a, b) << 32) | Math.max(a, b);
        Integer other = open.remove(key);
        if (other == null) {
          open.put(key, side);
        } else if (other != side) {
          visitor.edge(a, b);
        }
      }
    }
    open.keySet().forEach(e -> visitor.edge((int) (e >> 32), (int) (long) e));
  }

  private interface EdgeVisitor {
    void edge(int a, int b);
  }

  private double[] at(int vertex) {
    return new double[] {seen[3 * vertex], seen[3 * vertex + 1], seen[3 * vertex + 2]};
  }

  /** A landmark line, where it shows. */
  Path2D landmark(List<Position> line, View view, double mirror) {
    Path2D path = new Path2D.Double();
    for (int i = 1; i < line.size(); i++) {
      showing(path, view.seen(line.get(i - 1), mirror), view.seen(line.get(i), mirror), false);
    }
    return path;
  }

  /** Adds what shows of a straight line, in pieces; only what lies at the outside, if asked. */
  private void showing(Path2D path, double[] from, double[] to, boolean outside) {
    double length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    int pieces = Math.max(1, (int) Math.ceil(length / PIECE_MM));
    boolean drawing = false;
    for (int i = 0; i < pieces; i++) {
      double[] a = between(from, to, (double) i / pieces);
      double[] b = between(from, to, (i + 1.0) / pieces);
      double[] middle = between(a, b, 0.5);
      boolean wanted = outside ? atOutside(middle, a, b) : shows(middle);
      if (wanted && !drawing) {
        path.moveTo(a[0], a[1]);
      }
      if (wanted) {
        path.lineTo(b[0], b[1]);
      }
      drawing = wanted;
    }
  }

  private boolean shows(double[] place) {
    return depths.shows(place[0], place[1], place[2], TOLERANCE_MM);
  }

  private boolean atOutside(double[] place, double[] a, double[] b) {
    double length = Math.max(Math.hypot(b[0] - a[0], b[1] - a[1]), 1e-9);
    double x = BESIDE_MM * (b[1] - a[1]) / length;
    double y = BESIDE_MM * (a[0] - b[0]) / length;
    return !depths.covers(place[0] + x, place[1] + y) || !depths.covers(place[0] - x, place[1] - y);
  }

  private static double[] between(double[] a, double[] b, double w) {
    return new double[] {
      a[0] + w * (b[0] - a[0]), a[1] + w * (b[1] - a[1]), a[2] + w * (b[2] - a[2])
    };
  }
}
