package auricle.geometry;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BoxTreeTest {
  private final UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(3);

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 7, 300})
  void findsWhatComparingWithEveryBoxFindsAlsoAfterAllHaveMoved(int count) {
    BoxTree tree = new BoxTree(boxes(count));
    int most = 0;
    for (int move = 0; move < 3; move++) {
      double[] moved = boxes(count);
      tree.fit(moved);
      for (int q = 0; q < 100; q++) {
        double[] box = box(3 * random.nextDouble());
        int[] expected = IntStream.range(0, count).filter(i -> touch(moved, 6 * i, box)).toArray();
        int[] found = tree.touching(box);
        Arrays.sort(found);
        assertArrayEquals(expected, found);
        most = Math.max(most, found.length);
      }
    }
    assertTrue(count < 300 || most > 5, "queries that find something");
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5})
  void aBoxThatTouchesWithASideIsFound(int side) {
    BoxTree tree = new BoxTree(new double[] {0, 0, 0, 1, 1, 1});
    double[] beside = {0, 0, 0, 1, 1, 1};
    beside[side - 3] = 1;
    beside[side] = 2;
    assertEquals(1, tree.touching(beside).length);
    beside[side - 3] = Math.nextUp(1.0);
    assertEquals(0, tree.touching(beside).length);
  }

  private double[] boxes(int count) {
    double[] boxes = new double[6 * count];
    for (int i = 0; i < count; i++) {
      System.arraycopy(box(1.2 * random.nextDouble()), 0, boxes, 6 * i, 6);
    }
    return boxes;
  }

  private double[] box(double side) {
    double[] box = new double[6];
    for (int a = 0; a < 3; a++) {
      box[a] = 10 * random.nextDouble() - 5;
      box[3 + a] = box[a] + side * random.nextDouble();
    }
    return box;
  }

  private static boolean touch(double[] boxes, int at, double[] box) {
    return IntStream.range(0, 3)
        .allMatch(a -> boxes[at + a] <= box[3 + a] && boxes[at + 3 + a] >= box[a]);
  }
}
