package auricle.surgery;

import auricle.energy.ElasticThread;
import auricle.energy.MaterialPoint;
import auricle.energy.ThreadLaw;
import auricle.material.ThreadRow;
import java.util.List;
import java.util.Optional;

/**
 * A thread in the body, with what is known of it.
 *
 * @param name of the operation it belongs to
 * @param purpose what it stands for
 * @param points in the order in which it passes them
 * @param closed whether it returns to the first
 * @param axialStiffness_n EA, force per unit strain, N
 * @param row of the thread table; none for skin and bolsters
 * @param tearThrough_n tension at which a bite tears out, N; infinite where nothing tears
 * @param thread its energy
 */
public record BodyThread(
    String name,
    Purpose purpose,
    List<MaterialPoint> points,
    boolean closed,
    double axialStiffness_n,
    Optional<ThreadRow> row,
    double tearThrough_n,
    ElasticThread thread) {
  /** Keeps its own copy of the points. */
  public BodyThread {
    points = List.copyOf(points);
  }

  /** A suture through points, not tied yet. */
  static BodyThread suture(
      String name, List<MaterialPoint> points, ThreadRow row, double tearThrough_n) {
    double stiffness = row.axialStiffness_n();
    return new BodyThread(
        name,
        Purpose.SUTURE,
        points,
        true,
        stiffness,
        Optional.of(row),
        tearThrough_n,
        new ElasticThread("thread " + name, points, true, stiffness, row.diameter_mm()));
  }

  /** Something that pulls but is no suture. */
  static BodyThread pulling(
      String name,
      Purpose purpose,
      List<MaterialPoint> points,
      boolean closed,
      double axialStiffness_n) {
    return new BodyThread(
        name,
        purpose,
        points,
        closed,
        axialStiffness_n,
        Optional.empty(),
        Double.POSITIVE_INFINITY,
        new ElasticThread(name, points, closed, axialStiffness_n));
  }

  /** Length of thread in the loop when it pulls at nothing, mm; none until it is tied. */
  public Optional<Double> restLength_mm() {
    return thread.law() instanceof ThreadLaw.Elastic elastic
        ? Optional.of(elastic.restLength_mm())
        : Optional.empty();
  }

  /** What gives way at a tension, N, as it is tied, in words; none if thread and bites bear it. */
  public Optional<String> givesWay(double tension_n) {
    double knot = row.map(ThreadRow::knotPull_n).orElse(Double.POSITIVE_INFINITY);
    if (tension_n <= Math.min(knot, tearThrough_n)) {
      return Optional.empty();
    }
    String words =
        knot <= tearThrough_n
            ? "%s: to be tied at %.2f N, more than the %.2f N that thread and knot bear: it lets go as it is tied"
                .formatted(name, tension_n, knot)
            : "%s: to be tied at %.2f N, more than the %.2f N that its bite bears: it tears out as it is tied"
                .formatted(name, tension_n, tearThrough_n);
    return Optional.of(words);
  }

  /** Whether it does nothing: pulls at nothing and does not resist. */
  boolean slack(double[] u) {
    double length = thread.length(u);
    return thread.law().tension(length) <= 0 && thread.law().stiffness(length) <= 0;
  }

  /** The same thread with a law of its own, as it is now. */
  BodyThread copy() {
    BodyThread copy =
        new BodyThread(
            name, purpose, points, closed, axialStiffness_n, row, tearThrough_n, thread.fresh());
    copy.follow(thread.law());
    return copy;
  }

  /** Puts a law in force: a rest length, or a pull. */
  void follow(ThreadLaw law) {
    if (law instanceof ThreadLaw.Elastic elastic) {
      thread.tieToLength(elastic.restLength_mm());
    } else if (law instanceof ThreadLaw.ConstantPull pull) {
      thread.pull(pull.tension_N());
    }
  }

  /** Distance from one of its points to another, mm. */
  double distance(int from, int to, double[] u) {
    double[] a = points.get(from).position(u);
    double[] b = points.get(to).position(u);
    return Math.sqrt(
        (a[0] - b[0]) * (a[0] - b[0])
            + (a[1] - b[1]) * (a[1] - b[1])
            + (a[2] - b[2]) * (a[2] - b[2]));
  }
}
