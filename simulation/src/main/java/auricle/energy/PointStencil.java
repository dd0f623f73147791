package auricle.energy;

import auricle.geometry.Vectors;
import java.util.Arrays;
import java.util.List;

/**
 * Chain rule from a function of k point positions to the unknowns that move the points. Points may
 * share unknowns (bites in one triangle or in neighbours): every unknown stands once in the stencil
 * and what the points bring to it is summed.
 */
final class PointStencil {
  private final List<MaterialPoint> points;
  private final int[] stencil;
  private final int[][] places;

  PointStencil(List<MaterialPoint> points) {
    this.points = List.copyOf(points);
    this.stencil =
        points.stream()
            .flatMapToInt(p -> Arrays.stream(p.unknowns()))
            .distinct()
            .sorted()
            .toArray();
    this.places = new int[points.size()][];
    for (int i = 0; i < places.length; i++) {
      int[] unknowns = points.get(i).unknowns();
      places[i] = new int[unknowns.length];
      for (int k = 0; k < unknowns.length; k++) {
        places[i][k] = Arrays.binarySearch(stencil, unknowns[k]);
      }
    }
  }

  List<MaterialPoint> points() {
    return points;
  }

  int[] stencil() {
    return stencil;
  }

  /** Positions of all points, {@code [k][3]}. */
  double[][] positions(double[] u) {
    double[][] positions = new double[points.size()][];
    for (int i = 0; i < positions.length; i++) {
      positions[i] = points.get(i).position(u);
    }
    return positions;
  }

  /**
   * Overwrites the gradient and Hessian by the stencil.
   *
   * @param byPosition derivatives of the function by the positions, 3 k
   * @param byPositions second derivatives, 3 k × 3 k, row by row
   */
  void pullBack(
      double[] u, double[] byPosition, double[] byPositions, double[] gradient, double[] hessian) {
    int k = points.size();
    double[][] jacobian = new double[k][];
    Arrays.fill(gradient, 0, stencil.length, 0);
    Arrays.fill(hessian, 0, stencil.length * stencil.length, 0);
    for (int i = 0; i < k; i++) {
      jacobian[i] = points.get(i).jacobian(u);
      addGradient(i, jacobian[i], byPosition, gradient);
      addCurvature(i, u, Vectors.at(byPosition, 3 * i), hessian);
    }
    for (int i = 0; i < k; i++) {
      for (int j = 0; j < k; j++) {
        addBlock(i, j, jacobian, byPositions, hessian);
      }
    }
  }

  private void addGradient(int i, double[] jacobian, double[] byPosition, double[] gradient) {
    int n = places[i].length;
    for (int c = 0; c < n; c++) {
      for (int a = 0; a < 3; a++) {
        gradient[places[i][c]] += jacobian[a * n + c] * byPosition[3 * i + a];
      }
    }
  }

  private void addCurvature(int i, double[] u, double[] w, double[] hessian) {
    int n = places[i].length;
    double[] local = new double[n * n];
    points.get(i).addCurvature(u, w, local);
    for (int r = 0; r < n; r++) {
      for (int c = 0; c < n; c++) {
        hessian[places[i][r] * stencil.length + places[i][c]] += local[r * n + c];
      }
    }
  }

  private void addBlock(int i, int j, double[][] jacobian, double[] byPositions, double[] hessian) {
    int m = places[i].length;
    int n = places[j].length;
    int width = 3 * points.size();
    for (int a = 0; a < 3; a++) {
      for (int c = 0; c < n; c++) {
        double sum = 0;
        for (int b = 0; b < 3; b++) {
          sum += byPositions[(3 * i + a) * width + 3 * j + b] * jacobian[j][b * n + c];
        }
        for (int r = 0; r < m; r++) {
          hessian[places[i][r] * stencil.length + places[j][c]] += jacobian[i][a * m + r] * sum;
        }
      }
    }
  }
}
