package auricle.crosssolver;

import static org.junit.jupiter.api.Assertions.assertEquals;

import auricle.anatomy.MeshLevel;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Bites as the other solver is told of them: a mean of nodes that lie about it, in either body. */
class SpreadBiteTest {
  private static final double FACETS = 0.1;

  private static EarCase tied() {
    EarCase ear = new EarCase(MeshLevel.PLANNING);
    ear.tie(62, 6, 7, 1);
    return ear;
  }

  @Test
  void aBiteIsTheMeanOfPlacesOnWedges() {
    check(tied().shell().wedges().input(0.2));
  }

  @Test
  void aBiteIsTheMeanOfPlacesOnBricks() {
    check(tied().shell().wedges().bricks(true));
  }

  /** The equations say of the nodes' places what they say of their displacements. */
  private static void check(String input) {
    Map<Integer, double[]> nodes = new HashMap<>();
    int equations = 0;
    Iterator<String> lines = input.lines().iterator();
    String card = "";
    while (lines.hasNext()) {
      String line = lines.next();
      card = line.startsWith("*") ? line : card;
      if (line.equals("*EQUATION")) {
        equation(lines, nodes);
        equations++;
      } else if (card.startsWith("*NODE,") && !line.startsWith("*")) {
        List<Double> v = numbers(line);
        nodes.put(v.get(0).intValue(), new double[] {v.get(1), v.get(2), v.get(3)});
      }
    }
    assertEquals(6, equations, "three for each of two bites");
  }

  private static void equation(Iterator<String> lines, Map<Integer, double[]> nodes) {
    int left = Integer.parseInt(lines.next());
    double shares = 0;
    double places = 0;
    while (left > 0) {
      List<Double> v = numbers(lines.next());
      for (int k = 0; k < v.size(); k += 3, left--) {
        double[] place = Objects.requireNonNull(nodes.get(v.get(k).intValue()));
        shares += v.get(k + 2);
        places += v.get(k + 2) * place[v.get(k + 1).intValue() - 1];
      }
    }
    assertEquals(0, shares, 1e-9, "shares sum to one, that of the bite is -1");
    assertEquals(0, places, FACETS, "and the bite is where they are, mm");
  }

  private static List<Double> numbers(String line) {
    return Arrays.stream(line.split(","))
        .filter(word -> !word.isBlank())
        .map(Double::valueOf)
        .toList();
  }
}
