package auricle.anatomy;

import auricle.geometry.Vectors;

/**
 * A place on the smooth surface at rest, with the spot of the mesh that lies under it. The flat
 * triangles of a mesh cut corners, by some tenths of a millimetre at the fold; what is to stand in
 * the same place on every mesh stands on the smooth surface and rides on the triangle.
 */
public final class SurfacePlace {
  private final AuricleSurface surface;
  private final double around;
  private final double across;
  private final SurfaceSpot spot;

  SurfacePlace(AuricleSurface surface, double around, double across, SurfaceSpot spot) {
    this.surface = surface;
    this.around = around;
    this.across = across;
    this.spot = spot;
  }

  /** Its place around. */
  public double around() {
    return around;
  }

  /** Its place across, 0 … 1. */
  public double across() {
    return across;
  }

  /** The triangle under it, and where in it the place lies on the chart. */
  public SurfaceSpot spot() {
    return spot;
  }

  /**
   * The point at a distance from the smooth surface, x, y, z, mm.
   *
   * @param offset_mm along the normal, + towards the visible face
   */
  public double[] point(double offset_mm) {
    AuricleSurface.Slice slice = surface.slice(around);
    double[] p = slice.section().point(across);
    return offset_mm == 0 ? p : Vectors.add(p, offset_mm, slice.normal(across));
  }
}
