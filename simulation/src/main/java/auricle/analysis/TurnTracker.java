package auricle.analysis;

import auricle.geometry.Vectors;
import auricle.mesh.Directors;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Follows directors from state to state and sums their turns about the axes of rotation probes, so
 * that whole turns count. Between two states a director may turn by less than half a turn.
 */
final class TurnTracker {
  private final Directors directors;
  private final List<FollowedTurn> followed;
  private final double[] last;
  private final Map<String, Map<Integer, Double>> turned = new HashMap<>();

  /**
   * @param u unknowns at the start, with the directors as they are
   */
  TurnTracker(Directors directors, List<FollowedTurn> followed, double[] u) {
    this.directors = directors;
    this.followed = List.copyOf(followed);
    this.last = values(u);
    followed.forEach(f -> turned.put(f.probe(), new HashMap<>()));
  }

  private double[] values(double[] u) {
    double[] values = new double[3 * directors.unknowns().directorCount()];
    for (int i = 0; i < directors.unknowns().directorCount(); i++) {
      directors.value(i, u, values, 3 * i);
    }
    return values;
  }

  /** Takes note of a new state. */
  void follow(double[] u) {
    double[] now = values(u);
    for (FollowedTurn f : followed) {
      double[] axis = f.axis();
      for (int v : f.vertices()) {
        double change = turn(axis, Vectors.at(last, 3 * v), Vectors.at(now, 3 * v));
        of(f.probe()).merge(v, change, Double::sum);
      }
    }
    System.arraycopy(now, 0, last, 0, now.length);
  }

  private Map<Integer, Double> of(String probe) {
    return turned.getOrDefault(probe, Map.of());
  }

  private static double turn(double[] axis, double[] before, double[] after) {
    double[] a = Vectors.add(before, -Vectors.dot(before, axis), axis);
    double[] b = Vectors.add(after, -Vectors.dot(after, axis), axis);
    return Math.atan2(Vectors.dot(axis, Vectors.cross(a, b)), Vectors.dot(a, b));
  }

  /** Turn so far, rad. */
  double turned(String probe, int vertex) {
    return of(probe).getOrDefault(vertex, 0.0);
  }
}
