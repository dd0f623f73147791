package auricle.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

class SimplexDistanceTest {
  private final UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(20);

  private double[] point(double size) {
    double[] p = new double[3];
    for (int a = 0; a < 3; a++) {
      p[a] = size * (2 * random.nextDouble() - 1);
    }
    return p;
  }

  private static SimplexDistance distance(double[] z) {
    double[][] corners = new double[z.length / 3 - 1][];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = Vectors.at(z, 3 * i + 3);
    }
    return new SimplexDistance(Vectors.at(z, 0), corners);
  }

  @Test
  void noPointOfTheTriangleIsCloserAndTheReportedOneIsThatClose() {
    for (int trial = 0; trial < 2000; trial++) {
      double[] p = point(2);
      double[][] x = {point(1), point(1), point(1)};
      SimplexDistance found = new SimplexDistance(p, x);
      double[] w = found.weights();
      assertEquals(1, w[0] + w[1] + w[2], 1e-14);
      assertEquals(found.distance(), Vectors.norm(apart(p, x, w[0], w[1], w[2])), 1e-14);
      for (int sample = 0; sample < 50; sample++) {
        double a = random.nextDouble();
        double b = random.nextDouble() * (1 - a);
        double other = Vectors.norm(apart(p, x, a, b, 1 - a - b));
        assertTrue(found.distance() <= other + 1e-14);
      }
    }
  }

  private static double[] apart(double[] p, double[][] x, double a, double b, double c) {
    return Vectors.add(Vectors.add(Vectors.add(p, -a, x[0]), -b, x[1]), -c, x[2]);
  }

  @Test
  void derivativesAgreeWithDifferencesInEveryRegion() {
    int[] seen = new int[4];
    for (int trial = 0; trial < 600; trial++) {
      double[] z = new double[6 + 3 * (trial % 3)];
      for (int i = 0; i < z.length; i++) {
        z[i] = 2 * random.nextDouble() - 1;
      }
      SimplexDistance at = distance(z);
      if (at.distance() > 0.2 && farFromTheSeams(at.weights(), z)) {
        int active = 0;
        for (double w : at.weights()) {
          active += w > 0 ? 1 : 0;
        }
        seen[active]++;
        compare(z, at);
      }
    }
    assertTrue(seen[1] > 50 && seen[2] > 50 && seen[3] > 10, "all regions were met");
  }

  /** The same corners must be active a little way off in all directions. */
  private static boolean farFromTheSeams(double[] weights, double[] z) {
    for (int c = 0; c < 2 * z.length; c++) {
      double[] near = z.clone();
      near[c / 2] += c % 2 == 0 ? 1e-3 : -1e-3;
      double[] there = distance(near).weights();
      for (int i = 0; i < weights.length; i++) {
        if (weights[i] > 0 != there[i] > 0) {
          return false;
        }
      }
    }
    return true;
  }

  private static void compare(double[] z, SimplexDistance at) {
    int n = z.length;
    double h = 1e-5;
    double[] gradient = new double[n];
    double[] hessian = new double[n * n];
    double[] gradientUp = new double[n];
    double[] gradientDown = new double[n];
    at.gradient(gradient);
    at.hessian(hessian);
    for (int c = 0; c < n; c++) {
      double[] up = z.clone();
      double[] down = z.clone();
      up[c] += h;
      down[c] -= h;
      distance(up).gradient(gradientUp);
      distance(down).gradient(gradientDown);
      assertEquals(
          (distance(up).distance() - distance(down).distance()) / (2 * h), gradient[c], 1e-7);
      double size = 1e-6 * (1 + Math.abs(hessian[c * n + c]));
      for (int r = 0; r < n; r++) {
        double bend = (gradientUp[r] - gradientDown[r]) / (2 * h);
        assertEquals(bend, hessian[r * n + c], 10 * size);
      }
    }
  }
}
