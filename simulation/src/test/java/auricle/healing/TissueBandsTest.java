package auricle.healing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.Auricle;
import auricle.anatomy.MeshLevel;
import auricle.anatomy.ShapeParameters;
import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.measurement.EarMeasurer;
import auricle.numerics.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** How samples are run side by side and gathered; the ears here are made up, not computed. */
class TissueBandsTest {
  private static final int SAMPLES = 9;
  private static final Auricle EAR = Auricle.of(ShapeParameters.normalAdult(), MeshLevel.PLANNING);
  private static final EarMeasurer MEASURER = new EarMeasurer(EAR);

  /** An ear a little larger or smaller than the first, by its number alone. */
  private static Timeline sample(int number) {
    double size = 1 + 0.01 * new Random(number).nextGaussian();
    double[] unknowns = EAR.mesh().unknowns().clone();
    for (int i = 0; i < unknowns.length; i++) {
      unknowns[i] *= size;
    }
    MomentResult moment =
        new MomentResult(
            0,
            "tied",
            MEASURER.measure(unknowns),
            List.of(),
            Map.of(),
            Optional.empty(),
            new EarState(unknowns, new double[0], Optional.empty()),
            List.of());
    return new Timeline(List.of(moment), Outcome.CONVERGED, "", 0, 0, 0, Optional.empty());
  }

  private static Bands bands(int threads) {
    return TissueBands.of(SAMPLES, 1, threads, TissueBandsTest::sample, done -> {}).orElseThrow();
  }

  @Test
  void bandsAreTheSameToTheLastBitForAnyNumberOfThreads() {
    Bands one = bands(1);
    assertTrue(one.figures().stream().anyMatch(band -> band.high() > band.low()), "they spread");
    assertEquals(one, bands(2));
    assertEquals(one, bands(7));
  }

  @Test
  void everySampleIsToldOfOnceInOrder() {
    List<Integer> told = new ArrayList<>();
    TissueBands.of(SAMPLES, 1, 2, TissueBandsTest::sample, told::add);
    assertEquals(IntStream.rangeClosed(1, SAMPLES).boxed().toList(), told);
  }

  @Test
  void aCancelledSampleEndsAllWithoutBands() {
    TissueBands.Sample some =
        n -> n == 3 ? Timeline.none(Outcome.CANCELLED, "cancelled on request") : sample(n);
    List<Integer> told = new ArrayList<>();
    assertTrue(TissueBands.of(SAMPLES, 1, 2, some, told::add).isEmpty());
    assertEquals(List.of(1, 2, 3), told);
  }

  @Test
  void aSampleThatDoesNotComeToRestTakesNoPartAndIsNamed() {
    TissueBands.Sample some =
        n -> n == 3 ? Timeline.none(Outcome.STALLED, "no step lowers the energy") : sample(n);
    Bands bands = TissueBands.of(SAMPLES, 1, 2, some, done -> {}).orElseThrow();
    assertEquals(List.of("sample 3: no step lowers the energy"), bands.failures());
    assertEquals(SAMPLES, bands.samples());
  }

  @Test
  void whatKeptASampleFromBeingMadeIsSaidInWords() {
    TissueBands.Sample some =
        n -> {
          if (n == 2) {
            throw new BadInputException(Finding.error("row x", "found 3", "below 2", "Say less"));
          }
          if (n == 5) {
            throw new IllegalStateException("no such edge");
          }
          return sample(n);
        };
    Bands bands = TissueBands.of(SAMPLES, 1, 2, some, done -> {}).orElseThrow();
    assertEquals(
        List.of(
            "sample 2: row x: found 3; expected below 2. Say less",
            "sample 5: an error of the program, not of the tissue: no such edge"),
        bands.failures());
  }
}
