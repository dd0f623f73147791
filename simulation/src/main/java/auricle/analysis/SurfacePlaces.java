package auricle.analysis;

import auricle.energy.FixedPoint;
import auricle.energy.MaterialPoint;
import auricle.energy.SurfacePoint;
import auricle.geometry.SimplexDistance;
import auricle.mesh.ShellMesh;

/** Places on a surface that are given in space: the nearest point of the nearest triangle. */
final class SurfacePlaces {
  private final ShellMesh mesh;

  SurfacePlaces(ShellMesh mesh) {
    this.mesh = mesh;
  }

  /** A point of a thread. */
  MaterialPoint point(Load.ThreadPoint p) {
    Triple place = p.place();
    return p.fixed()
        ? new FixedPoint(place.x(), place.y(), place.z())
        : nearest(place.array(), p.offset_mm());
  }

  private SurfacePoint nearest(double[] place, double offset) {
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    double[] weights = {1, 0, 0};
    for (int t = 0; t < mesh.topology().triangleCount(); t++) {
      SimplexDistance d = new SimplexDistance(place, corner(t, 0), corner(t, 1), corner(t, 2));
      if (d.distance() < least) {
        least = d.distance();
        best = t;
        weights = d.weights().clone();
      }
    }
    return new SurfacePoint(mesh.topology(), best, weights[1], weights[2], offset);
  }

  private double[] corner(int t, int c) {
    int v = mesh.topology().vertex(t, c);
    return new double[] {mesh.position(v, 0), mesh.position(v, 1), mesh.position(v, 2)};
  }
}
