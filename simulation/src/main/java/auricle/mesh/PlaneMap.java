package auricle.mesh;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** A map of a parametric surface into the plane, for a triangulation. */
interface PlaneMap {
  /**
   * The straight sides of a sector are drawn bent outwards by this part of their length, so that
   * rounding cannot put a vertex of the rim inside the hull of the others.
   */
  double BULGE = 1e-3;

  /** Where a point with parameters s, t is drawn; more than once where the map goes on. */
  List<Coordinate> images(double[] parameters);

  /** Whether a triangle of the map is the one among its copies that counts. */
  boolean isHome(Coordinate[] triangle);

  /** Area of what counts, mm². */
  double area();

  /** The map that suits a surface; see {@link UnalignedCut#triangles}. */
  static PlaneMap of(ParametricSurface surface) {
    double height = SurfaceLengths.alongT(surface, 0.5, 0, 1);
    if (surface.pointAtLow() || surface.pointAtHigh()) {
      return sector(surface, height);
    }
    return rectangle(SurfaceLengths.alongS(surface, 0.5), height, surface.closed());
  }

  private static PlaneMap rectangle(double width, double height, boolean closed) {
    return new PlaneMap() {
      @Override
      public List<Coordinate> images(double[] p) {
        double x = width * p[0];
        double y = height * p[1];
        return closed
            ? List.of(
                new Coordinate(x - width, y), new Coordinate(x, y), new Coordinate(x + width, y))
            : List.of(new Coordinate(x, y));
      }

      @Override
      public boolean isHome(Coordinate[] c) {
        double middle = (c[0].x + c[1].x + c[2].x) / 3;
        return !closed || (middle >= 0 && middle < width);
      }

      @Override
      public double area() {
        return width * height;
      }
    };
  }

  private static PlaneMap sector(ParametricSurface surface, double radius) {
    if (surface.pointAtLow() && surface.pointAtHigh()) {
      throw new IllegalArgumentException(
          "an unaligned mesh cannot be made of a surface with points on both sides");
    }
    double tip = surface.pointAtLow() ? 0 : 1;
    double near = Math.abs(tip - 1e-3);
    double arc = SurfaceLengths.alongS(surface, near);
    double angle =
        surface.closed() ? 2 * Math.PI : arc / SurfaceLengths.alongT(surface, 0.5, tip, near);
    if (!surface.closed() && angle > Math.PI + BULGE) {
      throw new IllegalArgumentException(
          "an unaligned mesh about a point needs a full turn or no more than half of one");
    }
    double drawn = surface.closed() ? angle : Math.min(angle, Math.PI - 8 * BULGE);
    return new PlaneMap() {
      @Override
      public List<Coordinate> images(double[] p) {
        double part = surface.pointAtLow() ? p[1] : 1 - p[1];
        double s = surface.pointAtLow() ? p[0] : 1 - p[0];
        double r = radius * part;
        double a = drawn * s;
        double out = surface.closed() ? 0 : BULGE * radius * 4 * part * (1 - part) * (2 * s - 1);
        return List.of(
            new Coordinate(
                r * Math.cos(a) - out * Math.sin(a), r * Math.sin(a) + out * Math.cos(a)));
      }

      @Override
      public boolean isHome(Coordinate[] c) {
        return true;
      }

      @Override
      public double area() {
        return angle / 2 * radius * radius;
      }
    };
  }
}
