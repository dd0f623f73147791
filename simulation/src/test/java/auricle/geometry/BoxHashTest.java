package auricle.geometry;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

class BoxHashTest {
  @Test
  void findsWhatComparingWithEveryBoxFinds() {
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(3);
    double[][] boxes = new double[300][];
    for (int i = 0; i < boxes.length; i++) {
      boxes[i] = box(random, 0.6);
    }
    BoxHash hash = new BoxHash(boxes);
    for (int q = 0; q < 200; q++) {
      double[] query = box(random, 2);
      List<Integer> expected =
          IntStream.range(0, boxes.length).filter(i -> meet(boxes[i], query)).boxed().toList();
      assertEquals(expected, hash.overlapping(query));
    }
  }

  @Test
  void boxAroundPointsIsWidenedByTheMargin() {
    double[] box = BoxHash.around(0.5, new double[] {1, 2, 3}, new double[] {0, 4, 3});
    assertArrayEquals(new double[] {-0.5, 1.5, 2.5, 1.5, 4.5, 3.5}, box);
  }

  private static boolean meet(double[] a, double[] b) {
    return IntStream.range(0, 3).allMatch(c -> a[c] <= b[c + 3] && b[c] <= a[c + 3]);
  }

  private static double[] box(UniformRandomProvider random, double size) {
    double[] box = new double[6];
    for (int c = 0; c < 3; c++) {
      box[c] = 10 * random.nextDouble() - 5;
      box[c + 3] = box[c] + size * random.nextDouble();
    }
    return box;
  }
}
