package auricle.equilibrium;

import auricle.energy.ElasticThread;
import auricle.energy.EnergyTerm;
import auricle.energy.VertexPoint;
import auricle.mesh.MovingFrame;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Bars between points strewn in a box, of stiffness and load over many powers of ten: mechanisms,
 * loose points, bars of no length and loads that are no numbers among them.
 */
final class RandomNetwork extends RandomModel {
  private final double[] rest;
  private final List<EnergyTerm> terms = new ArrayList<>();
  private final Supports supports;

  RandomNetwork(UniformRandomProvider random) {
    super(random);
    int vertices = 2 + random.nextInt(7);
    rest = new double[3 * vertices];
    double size = power(-1, 2);
    for (int i = 0; i < rest.length; i++) {
      rest[i] = size * (chance(0.1) ? 0.5 : random.nextDouble());
    }
    for (int k = 0; k < 1 + random.nextInt(2); k++) {
      terms.add(bars(vertices));
    }
    if (chance(0.3) && vertices > 2) {
      ElasticThread thread =
          new ElasticThread(
              "thread",
              List.of(new VertexPoint(0), new VertexPoint(1), new VertexPoint(2)),
              chance(0.5),
              power(-1, 5));
      double length = thread.length(rest);
      thread.tighten(length, between(0.3, 1.1) * length);
      terms.add(thread);
    }
    for (int k = 0; k < random.nextInt(4); k++) {
      terms.add(new Pull(random.nextInt(rest.length), force(-5, 5)));
    }
    supports = supports(size);
  }

  private Bars bars(int vertices) {
    double connected = between(0.3, 1);
    List<Integer> ends = new ArrayList<>(List.of(0, 1));
    for (int a = 0; a < vertices; a++) {
      for (int b = Math.max(2, a + 1); b < vertices; b++) {
        if (chance(connected)) {
          ends.add(a);
          ends.add(b);
        }
      }
    }
    return new Bars(power(-3, 7), rest, ends.stream().mapToInt(i -> i).toArray());
  }

  private Supports supports(double size) {
    Supports.Builder builder = new Supports.Builder(rest.length, rest.length);
    double held = between(0.1, 0.6);
    for (int i = 0; i < rest.length; i++) {
      if (chance(held)) {
        builder.fix(i);
      } else if (chance(0.05)) {
        builder.prescribe(i, between(-1, 1) * size);
      }
    }
    return builder.build();
  }

  @Override
  TotalEnergy energy() {
    return new TotalEnergy(terms, supports, MovingFrame.NONE, rest, 1);
  }
}
