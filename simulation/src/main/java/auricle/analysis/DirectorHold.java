package auricle.analysis;

import auricle.diagnostics.Findings;
import auricle.equilibrium.Supports;
import auricle.geometry.Vectors;
import auricle.mesh.Directors;
import java.util.Map;
import java.util.Optional;

/**
 * How a director is held: altogether; in a plane (its second tilt, which lies along the normal of
 * the plane once the frame is aligned); or turned about an axis by its first tilt.
 */
final class DirectorHold {
  /** Neither tilt is free. */
  static final DirectorHold FULLY = new DirectorHold("", Optional.empty(), true, 0);

  private static final double SAME = 1 - 1e-9;

  private final String at;
  private final Optional<double[]> axis;
  private final boolean both;
  private final double angle;
  private double sign = 1;

  private DirectorHold(String at, Optional<double[]> axis, boolean both, double angle) {
    this.at = at;
    this.axis = axis;
    this.both = both;
    this.angle = angle;
  }

  /** It stays in the plane with that unit normal. */
  static DirectorHold inPlane(String at, double[] normal) {
    return new DirectorHold(at, Optional.of(normal), false, 0);
  }

  /** It turns about an axis by an angle at load factor 1, and not otherwise. */
  static DirectorHold turned(String at, double[] axis, double angle) {
    return new DirectorHold(at, Optional.of(axis), true, angle);
  }

  /** Both together. */
  DirectorHold and(DirectorHold other) {
    if (angle != 0 || other.angle != 0) {
      return angle != 0 ? this : other;
    }
    boolean same =
        axis.isPresent()
            && other.axis.isPresent()
            && Math.abs(Vectors.dot(axis.get(), other.axis.get())) > SAME;
    return same && !both ? this : FULLY;
  }

  /** Turns the frame so that the second tilt lies along the axis. */
  void align(Directors directors, int director, Findings findings) {
    if (axis.isEmpty()) {
      return;
    }
    double[] a = axis.get();
    try {
      directors.align(director, a[0], a[1], a[2]);
    } catch (IllegalArgumentException parallel) {
      findings.error(
          at,
          "the surface normal at vertex " + director + " points along the given direction",
          "a direction in the surface",
          "A plane of symmetry stands at right angles to the surface.");
      return;
    }
    double[] turned = Vectors.cross(a, frame(directors, director, 0));
    sign = Math.signum(Vectors.dot(turned, frame(directors, director, 1)));
  }

  private static double[] frame(Directors directors, int director, int k) {
    return new double[] {
      directors.frame(director, k, 0),
      directors.frame(director, k, 1),
      directors.frame(director, k, 2)
    };
  }

  /** Whether tilt k (0, 1) is not free. */
  boolean holds(int k) {
    return both || k == 1;
  }

  /** Holds and moves the tilts of a director whose first tilt has that number. */
  void apply(Supports.Builder builder, int firstTilt) {
    builder.fix(firstTilt + 1);
    if (both) {
      builder.fix(firstTilt);
    }
    if (angle != 0) {
      builder.prescribe(firstTilt, sign * angle);
    }
  }

  /** Adds the amount by which the first tilt is moved at load factor 1, if it is. */
  void amounts(int firstTilt, Map<Integer, Double> amounts) {
    if (angle != 0) {
      amounts.put(firstTilt, sign * angle);
    }
  }
}
