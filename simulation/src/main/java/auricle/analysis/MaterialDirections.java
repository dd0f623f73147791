package auricle.analysis;

import auricle.geometry.PlateFrame;
import auricle.geometry.Vectors;
import auricle.mesh.ShellMesh;

/** Angles of material axes in the triangles of a mesh. */
final class MaterialDirections {
  private static final double STEEP = 1e-6;

  private final ShellMesh mesh;

  MaterialDirections(ShellMesh mesh) {
    this.mesh = mesh;
  }

  /**
   * Angle from a triangle's own axis (edge 0, corner 1 to corner 2) to a material axis laid into
   * its plane, anticlockwise about the normal, rad; NaN if the axis stands normal to it.
   */
  double angle(int triangle, MaterialAxis axis) {
    double[] a = corner(triangle, 0);
    double[] b = corner(triangle, 1);
    double[] c = corner(triangle, 2);
    double[] normal = new PlateFrame(a, b, c).normal();
    double[] middle = Vectors.scale(1.0 / 3, Vectors.add(Vectors.add(a, 1, b), 1, c));
    double[] wanted = direction(axis, middle);
    double length = Vectors.norm(wanted);
    double[] laid = Vectors.add(wanted, -Vectors.dot(wanted, normal), normal);
    if (!(Vectors.norm(laid) > STEEP * length)) {
      return Double.NaN;
    }
    double[] own = Vectors.unit(Vectors.subtract(c, b));
    return Math.atan2(Vectors.dot(laid, Vectors.cross(normal, own)), Vectors.dot(laid, own));
  }

  /** For output where no axis is given: along x, or along y where x is normal to the surface. */
  double usual(int triangle) {
    double angle = angle(triangle, new MaterialAxis.Along("", new Triple(1, 0, 0)));
    return Double.isNaN(angle)
        ? angle(triangle, new MaterialAxis.Along("", new Triple(0, 1, 0)))
        : angle;
  }

  /** Unit vector of a triangle's own axis turned by an angle in its plane, in space. */
  double[] vector(int triangle, double angle) {
    double[] a = corner(triangle, 0);
    double[] b = corner(triangle, 1);
    double[] c = corner(triangle, 2);
    double[] normal = new PlateFrame(a, b, c).normal();
    double[] own = Vectors.unit(Vectors.subtract(c, b));
    double[] across = Vectors.cross(normal, own);
    return Vectors.add(Vectors.scale(Math.cos(angle), own), Math.sin(angle), across);
  }

  private static double[] direction(MaterialAxis axis, double[] x) {
    if (axis instanceof MaterialAxis.Around around) {
      double[] arm = Vectors.subtract(x, around.point().array());
      return Vectors.cross(around.axis().array(), arm);
    }
    return ((MaterialAxis.Along) axis).direction().array();
  }

  private double[] corner(int triangle, int c) {
    int v = mesh.topology().vertex(triangle, c);
    return new double[] {mesh.position(v, 0), mesh.position(v, 1), mesh.position(v, 2)};
  }
}
