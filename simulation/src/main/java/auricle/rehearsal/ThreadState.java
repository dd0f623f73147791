package auricle.rehearsal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

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

  /**
   * The same threads for a reader, in their order: what pulls but is no suture, such as skin along
   * a strip, once for each operation, with the sum of its tensions.
   */
  public static List<ThreadState> gathered(List<ThreadState> threads) {
    // A number for a suture, so that no name of anything else can be taken for it.
    Map<Object, ThreadState> gathered = new LinkedHashMap<>();
    for (ThreadState thread : threads) {
      Object key = thread.suture() ? gathered.size() : thread.name();
      gathered.merge(key, thread, ThreadState::and);
    }
    return List.copyOf(gathered.values());
  }

  private ThreadState and(ThreadState other) {
    double sum = tension_n + other.tension_n;
    return new ThreadState(
        name,
        suture,
        sum,
        knotPull_n,
        tearThrough_n,
        sum < SLACK_N,
        length_mm + other.length_mm,
        closed,
        Stream.concat(points.stream(), other.points.stream()).toList());
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
