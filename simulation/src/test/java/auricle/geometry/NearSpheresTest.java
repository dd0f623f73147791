package auricle.geometry;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

class NearSpheresTest {
  @Test
  void findsWhatComparingWithEverySphereFinds() {
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(3);
    double[][] spheres = new double[300][];
    for (int i = 0; i < spheres.length; i++) {
      spheres[i] = new double[] {at(random), at(random), at(random), 0.6 * random.nextDouble()};
    }
    NearSpheres near = new NearSpheres(spheres);
    int most = 0;
    for (int q = 0; q < 200; q++) {
      double[] point = {at(random), at(random), at(random)};
      double reach = 2 * random.nextDouble();
      int[] expected =
          IntStream.range(0, spheres.length)
              .filter(i -> distance(point, spheres[i]) - spheres[i][3] <= reach)
              .toArray();
      int[] found = near.within(reach, point);
      Arrays.sort(found);
      assertArrayEquals(expected, found);
      most = Math.max(most, found.length);
    }
    assertTrue(most > 5, "queries that find something");
  }

  @Test
  void aSphereAroundPointsHoldsThemAllWithTheMargin() {
    double[] sphere = NearSpheres.around(0.5, new double[] {1, 2, 3}, new double[] {3, 2, 3});
    assertArrayEquals(new double[] {2, 2, 3, 1.5}, sphere);
  }

  private static double at(UniformRandomProvider random) {
    return 10 * random.nextDouble() - 5;
  }

  private static double distance(double[] a, double[] b) {
    return Math.sqrt(
        (a[0] - b[0]) * (a[0] - b[0])
            + (a[1] - b[1]) * (a[1] - b[1])
            + (a[2] - b[2]) * (a[2] - b[2]));
  }
}
