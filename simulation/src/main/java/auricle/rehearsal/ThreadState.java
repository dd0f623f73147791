package auricle.rehearsal;

import java.util.List;

/**
 * A thread in a state of rest.
 *
 * @param name name of the operation that put it in
 * @param suture whether it is a suture; otherwise skin or a pad that pulls
 * @param tension_n tension all along it, N, not negative
 * @param knotPull_n least knot-pull strength of its size, N; infinite if it is no suture
 * @param tearThrough_n tension at which its bites tear out of the tissue, N; infinite if it has
 *     none
 * @param slack whether it carries nothing
 * @param length_mm present length along all spans, mm
 * @param closed whether it returns from the last point to the first
 * @param points where it passes, in order
 */
public record ThreadState(
    String name,
    boolean suture,
    double tension_n,
    double knotPull_n,
    double tearThrough_n,
    boolean slack,
    double length_mm,
    boolean closed,
    List<Position> points) {
  /** Below this tension a thread counts as slack, N. */
  public static final double SLACK_N = 1e-3;

  /** Keeps its own copy of the points. */
  public ThreadState {
    points = List.copyOf(points);
  }

  /** Tension over knot-pull strength. */
  public double shareOfKnotPull() {
    return tension_n / knotPull_n;
  }

  /** Tension over tear-through. */
  public double shareOfTearThrough() {
    return tension_n / tearThrough_n;
  }
}
