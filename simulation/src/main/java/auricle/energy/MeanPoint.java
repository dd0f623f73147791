package auricle.energy;

import auricle.geometry.Vectors;
import java.util.Arrays;
import java.util.List;

/**
 * A weighted mean of points that the shell carries: a load that is spread over them, and what it
 * works on.
 *
 * <pre>
 *   p = Σ_j c_j p_j,   Σ_j c_j = 1
 * </pre>
 *
 * <p>Its unknowns are those of all of them, each once, ascending.
 */
public final class MeanPoint implements MaterialPoint {
  private final List<MaterialPoint> points;
  private final List<Double> shares;
  private final int[] unknowns;
  private final int[][] places;

  /**
   * @param points one or more
   * @param shares c_j, as many
   * @throws IllegalArgumentException if the shares do not sum to one
   */
  public MeanPoint(List<? extends MaterialPoint> points, List<Double> shares) {
    this.points = List.copyOf(points);
    this.shares = List.copyOf(shares);
    double sum = shares.stream().mapToDouble(c -> c).sum();
    if (shares.size() != points.size() || !(Math.abs(sum - 1) < 1e-9)) {
      throw new IllegalArgumentException(
          "%d shares %s of %d points".formatted(shares.size(), shares, points.size()));
    }
    unknowns =
        points.stream()
            .flatMapToInt(p -> Arrays.stream(p.unknowns()))
            .distinct()
            .sorted()
            .toArray();
    places = new int[points.size()][];
    for (int j = 0; j < places.length; j++) {
      places[j] =
          Arrays.stream(points.get(j).unknowns())
              .map(k -> Arrays.binarySearch(unknowns, k))
              .toArray();
    }
  }

  @Override
  public int[] unknowns() {
    return unknowns;
  }

  @Override
  public double[] position(double[] u) {
    double[] p = new double[3];
    for (int j = 0; j < points.size(); j++) {
      p = Vectors.add(p, shares.get(j), points.get(j).position(u));
    }
    return p;
  }

  @Override
  public double[] jacobian(double[] u) {
    int n = unknowns.length;
    double[] jacobian = new double[3 * n];
    for (int j = 0; j < places.length; j++) {
      double[] one = points.get(j).jacobian(u);
      int m = places[j].length;
      for (int a = 0; a < 3; a++) {
        for (int k = 0; k < m; k++) {
          jacobian[a * n + places[j][k]] += shares.get(j) * one[a * m + k];
        }
      }
    }
    return jacobian;
  }

  @Override
  public void addCurvature(double[] u, double[] w, double[] hessian) {
    int n = unknowns.length;
    for (int j = 0; j < places.length; j++) {
      int m = places[j].length;
      double[] one = new double[m * m];
      points.get(j).addCurvature(u, Vectors.scale(shares.get(j), w), one);
      for (int r = 0; r < m; r++) {
        for (int c = 0; c < m; c++) {
          hessian[places[j][r] * n + places[j][c]] += one[r * m + c];
        }
      }
    }
  }
}
