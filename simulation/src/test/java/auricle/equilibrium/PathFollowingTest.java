package auricle.equilibrium;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.numerics.Outcome;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class PathFollowingTest {
  @Test
  void followsTheTrussDownItsUnstableBranchAndUpAgain() {
    double limit = TwoBarTruss.force(TwoBarTruss.limitDepth());
    double end = 1.5 * limit;
    List<PathLevel> outputs =
        DoubleStream.of(-0.5 * limit, 0, 0.5 * limit).mapToObj(PathLevel::load).toList();
    LoadPath path =
        new PathFollowing(TwoBarTruss.loaded(), PathSettings.USUAL, StepMonitor.NONE)
            .run(PathLevel.load(end), outputs);
    assertEquals(Outcome.CONVERGED, path.outcome(), path.reason());
    for (EquilibriumState state : path.states()) {
      double depth = TwoBarTruss.HEIGHT - state.unknowns()[TwoBarTruss.APEX];
      assertEquals(TwoBarTruss.force(depth), state.loadFactor(), 1e-7 * limit);
    }
    // up through half, down through half, 0, minus half, and up again through all
    assertEquals(8, path.requested().size());
    assertEquals(end, path.last().loadFactor(), 1e-12 * end);
    assertEquals(2, path.events().size());
    path.events().forEach(e -> assertEquals(PathEvent.Kind.LIMIT_POINT, e.kind(), e.words()));
    assertTrue(path.events().get(0).words().contains("unstable beyond it (1 mode(s))"));
    assertTrue(path.events().get(1).words().contains("; stable beyond it"));
    String told = path.events().get(0).words().split("load factor ", 2)[1].split(",", 2)[0];
    assertEquals(limit, Double.parseDouble(told), 0.01 * limit);
    long unstable = path.states().stream().filter(s -> s.solution().negativePivots() == 1).count();
    assertTrue(unstable > 3);
  }

  @Test
  void hitsRequestedPlacesOfACoordinate() {
    List<PathLevel> outputs =
        DoubleStream.of(1.7, 1, 0.4)
            .mapToObj(y -> PathLevel.coordinate(TwoBarTruss.APEX, y))
            .toList();
    LoadPath path =
        new PathFollowing(TwoBarTruss.loaded(), PathSettings.USUAL, StepMonitor.NONE)
            .run(PathLevel.coordinate(TwoBarTruss.APEX, -2.5), outputs);
    assertEquals(4, path.requested().size(), path.reason());
    for (int k = 0; k < 3; k++) {
      EquilibriumState state = path.requested().get(k);
      assertEquals(outputs.get(k).value(), state.unknowns()[TwoBarTruss.APEX], 1e-9);
      double depth = TwoBarTruss.HEIGHT - outputs.get(k).value();
      assertEquals(TwoBarTruss.force(depth), state.loadFactor(), 1e-7);
    }
  }

  @Test
  void endsInWordsWhereNothingMovesWithTheLoad() {
    LoadPath path =
        new PathFollowing(
                new BentChain(5, 1, 1).loaded(1e3, 0), PathSettings.USUAL, StepMonitor.NONE)
            .run(PathLevel.load(1), List.of());
    assertEquals(Outcome.STALLED, path.outcome());
    assertTrue(path.reason().contains("nothing moves"), path.reason());
  }
}
