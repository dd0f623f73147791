package auricle.analysis;

import java.util.List;

/** Where a mesh comes from. */
public sealed interface MeshSource {
  /** Place in the model file. */
  String at();

  /** A mesh file, its path already resolved against the model file. */
  record File(String at, String path) implements MeshSource {}

  /** A generated mesh. */
  record Generated(String at, Shape shape, Grid grid) implements MeshSource {}

  /** How a shape is cut into triangles. */
  enum Pattern {
    /** All diagonals the same way. */
    ONE_WAY,
    /** Diagonals alternate. */
    ALTERNATING,
    /** Four triangles about a vertex in the middle of every cell. */
    CROSSED
  }

  /**
   * The grid laid on a shape.
   *
   * @param first cells in the first direction
   * @param second cells in the second direction
   * @param jitter random shift of inner vertices as a fraction of a cell, 0 … 0.45
   * @param seed of the jitter
   */
  record Grid(int first, int second, Pattern pattern, double jitter, long seed) {}

  /** A surface that can be generated; angles in degrees, lengths in mm. */
  sealed interface Shape {}

  /** Flat rectangle along x and y, twisted about its middle line if asked for. */
  record Strip(double length_mm, double width_mm, double twist_deg) implements Shape {}

  /** Flat parallelogram from the origin along x. */
  record Plate(double length_mm, double width_mm, double angle_deg) implements Shape {}

  /** Bilinear surface between four corners in order around it. */
  record Quadrilateral(List<Triple> corners) implements Shape {}

  /** Range of the angle about the z axis. */
  record Turn(double from_deg, double to_deg, boolean slit) {
    /** Whether it is a full turn that closes on itself. */
    public boolean closed() {
      return !slit && Math.abs(Math.abs(to_deg - from_deg) - 360) < 1e-9;
    }
  }

  /** Cylinder about z, from z = 0. */
  record Cylinder(double radius_mm, double length_mm, Turn turn) implements Shape {}

  /** Part of a sphere between two angles from the +z pole. */
  record Sphere(double radius_mm, double polarFrom_deg, double polarTo_deg, Turn turn)
      implements Shape {}

  /** Flat ring in z = 0. */
  record Annulus(double inner_mm, double outer_mm, Turn turn) implements Shape {}

  /** Flat disc in z = 0. */
  record Disc(double radius_mm) implements Shape {}

  /** Frustum about z, from z = 0. */
  record Cone(double lower_mm, double upper_mm, double height_mm, Turn turn) implements Shape {}

  /** A curve in the x-z plane drawn out along y. */
  record Profile(List<Piece> pieces, double width_mm) implements Shape {}

  /**
   * A piece of a profile.
   *
   * @param length_mm along the curve
   * @param turn_deg by which the direction turns over the piece, positive towards the left; 0:
   *     straight
   */
  record Piece(double length_mm, double turn_deg) {}
}
