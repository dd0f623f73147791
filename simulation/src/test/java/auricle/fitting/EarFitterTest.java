package auricle.fitting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.EarMeasurements;
import auricle.anatomy.MeshLevel;
import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EarFitterTest {
  private static final EarMeasurements ADULT = EarMeasurements.normalAdult();
  private static final EarMeasurements CHILD = EarMeasurements.normalChild();

  static List<EarMeasurements> ears() {
    return List.of(
        ADULT,
        CHILD,
        CHILD
            .withHelixMastoidUpper_mm(22)
            .withHelixMastoidMiddle_mm(22)
            .withHelixMastoidLower_mm(18.5)
            .withFoldAngleUpper_deg(132)
            .withFoldAngleMiddle_deg(125)
            .withAuriculocephalicAngle_deg(38),
        ADULT
            .withBowlDepth_mm(17)
            .withHelixMastoidUpper_mm(18)
            .withHelixMastoidMiddle_mm(24)
            .withHelixMastoidLower_mm(22)
            .withAuriculocephalicAngle_deg(40),
        openFoldThatLeastSquaresMisses());
  }

  /** Least squares leaves its middle level 0.52 mm off and the others with room to spare. */
  private static EarMeasurements openFoldThatLeastSquaresMisses() {
    return ADULT
        .withBowlDepth_mm(12.6)
        .withHelixMastoidUpper_mm(18.3)
        .withHelixMastoidMiddle_mm(18.5)
        .withHelixMastoidLower_mm(18.3)
        .withFoldAngleUpper_deg(136)
        .withFoldAngleMiddle_deg(134)
        .withAuriculocephalicAngle_deg(29);
  }

  @ParameterizedTest
  @MethodSource("ears")
  void everyMeasurementIsMetOnTheMesh(EarMeasurements ear) throws BadInputException {
    FittedEar fitted = EarFitter.fit(ear, MeshLevel.PLANNING, "");
    assertTrue(fitted.met(), () -> fitted.residuals().toString());
    assertEquals(MeshLevel.PLANNING, fitted.auricle().level());
  }

  @Test
  void theSameEarIsFittedToTheLastBit() {
    assertEquals(
        EarFitter.nearest(CHILD, MeshLevel.PLANNING).measures(),
        EarFitter.nearest(CHILD, MeshLevel.PLANNING).measures());
  }

  @Test
  void measurementsThatCannotHoldTogetherAreNamedWithTheNearestThatCan() {
    EarMeasurements odd = ADULT.withHelixMastoidMiddle_mm(30).withAuriculocephalicAngle_deg(20);
    BadInputException refused =
        assertThrows(
            BadInputException.class, () -> EarFitter.fit(odd, MeshLevel.PLANNING, "/ears/0/ear"));
    Map<String, Finding> byPlace =
        refused.findings().stream().collect(Collectors.toMap(Finding::where, f -> f));
    Finding middle =
        Objects.requireNonNull(byPlace.get("/ears/0/ear/helix_mastoid_middle_mm"), "no finding");
    assertTrue(middle.found().startsWith("30.0 mm does not hold together with"), middle.line());
    assertTrue(middle.found().contains("auriculocephalic angle 20.0 deg"), middle.line());
    assertTrue(middle.expected().startsWith("about 2"), middle.line());
  }
}
