package auricle.analysis;

import auricle.diagnostics.Findings;
import auricle.geometry.Vectors;
import auricle.mesh.ShellMesh;
import java.util.function.IntPredicate;
import java.util.function.ToDoubleFunction;

/** Selectors that look at where vertices are. */
final class GeometricSelectors {
  private static final double COINCIDENT = 1e-6;

  private final ShellMesh mesh;
  private final Findings findings;
  private final double size;

  GeometricSelectors(ShellMesh mesh, Findings findings) {
    this.mesh = mesh;
    this.findings = findings;
    this.size = size(mesh);
  }

  /** Diagonal of the box around a mesh, mm. */
  static double size(ShellMesh mesh) {
    double square = 0;
    for (int c = 0; c < 3; c++) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int v = 0; v < mesh.vertexCount(); v++) {
        low = Math.min(low, mesh.position(v, c));
        high = Math.max(high, mesh.position(v, c));
      }
      square += (high - low) * (high - low);
    }
    return Math.sqrt(square);
  }

  /** Which vertices are near a plane. */
  IntPredicate near(Selector.Plane s) {
    double[] n = unit(s.at() + "/plane/normal", s.normal());
    double tolerance = Double.isNaN(s.tolerance_mm()) ? COINCIDENT * size : s.tolerance_mm();
    return within(x -> Math.abs(Vectors.dot(n, minus(x, s.point()))), 0, tolerance);
  }

  /** Which vertices are in a box. */
  IntPredicate inside(Selector.Box s) {
    return v ->
        inside(v, 0, s.low().x(), s.high().x())
            && inside(v, 1, s.low().y(), s.high().y())
            && inside(v, 2, s.low().z(), s.high().z());
  }

  /** Which vertices are at those distances from a point. */
  IntPredicate between(Selector.Ball s) {
    return within(x -> Vectors.norm(minus(x, s.centre())), s.from_mm(), s.to_mm());
  }

  /** Which vertices are at those distances from an axis. */
  IntPredicate between(Selector.Tube s) {
    double[] a = unit(s.at() + "/tube/axis", s.axis());
    return within(x -> Vectors.norm(Vectors.cross(a, minus(x, s.point()))), s.from_mm(), s.to_mm());
  }

  /** Which vertex is the nearest to a point. */
  IntPredicate nearest(Selector.Nearest s) {
    int nearest = nearest(s.point().array());
    return v -> v == nearest;
  }

  private IntPredicate within(ToDoubleFunction<double[]> distance, double from, double to) {
    double slack = COINCIDENT * size;
    return v -> {
      double d = distance.applyAsDouble(at(v));
      return d >= from - slack && d <= to + slack;
    };
  }

  private boolean inside(int vertex, int c, double low, double high) {
    double slack = COINCIDENT * size;
    double x = mesh.position(vertex, c);
    return x >= low - slack && x <= high + slack;
  }

  /** The vertex nearest to a point; those nearer than rounding count as equal, the first wins. */
  int nearest(double[] point) {
    int nearest = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      double d = Vectors.norm(Vectors.subtract(at(v), point));
      if (d < least - COINCIDENT * COINCIDENT * size) {
        least = d;
        nearest = v;
      }
    }
    return nearest;
  }

  private double[] at(int v) {
    return new double[] {mesh.position(v, 0), mesh.position(v, 1), mesh.position(v, 2)};
  }

  private static double[] minus(double[] x, Triple point) {
    return Vectors.subtract(x, point.array());
  }

  /** A direction as a unit vector; a finding if it has none. */
  double[] unit(String at, Triple direction) {
    if (direction.isZero()) {
      findings.error(at, "a vector of length zero", "a direction", "");
      return new double[] {0, 0, 1};
    }
    return Vectors.unit(direction.array());
  }
}
