package auricle.fitting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.EarMeasurements;
import auricle.anatomy.MeshFaults;
import auricle.anatomy.MeshLevel;
import auricle.anatomy.SelfCrossing;
import auricle.anatomy.ShapeKnob;
import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EarFitterTest {
  private static final int ANY = 16;
  private static final int MOST = 15;
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
        openFoldThatLeastSquaresMisses(),
        shallowBowlThatNoUsualEarHas());
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

  /** Its wall is steeper than that of usual ears: the wide bounds meet it. */
  private static EarMeasurements shallowBowlThatNoUsualEarHas() {
    return ADULT
        .withBowlDepth_mm(10.1)
        .withHelixMastoidUpper_mm(20.4)
        .withHelixMastoidMiddle_mm(21.6)
        .withHelixMastoidLower_mm(21.8)
        .withFoldAngleUpper_deg(117)
        .withFoldAngleMiddle_deg(111)
        .withAuriculocephalicAngle_deg(37);
  }

  @ParameterizedTest
  @MethodSource("ears")
  void everyMeasurementIsMetOnTheMesh(EarMeasurements ear) throws BadInputException {
    FittedEar fitted = EarFitter.fit(ear, MeshLevel.PLANNING, "");
    assertTrue(fitted.met(), () -> fitted.residuals().toString());
    assertEquals(MeshLevel.PLANNING, fitted.auricle().level());
  }

  /** Ears about the means of prominent and normal ones (rows A1 to A11), measured independently. */
  private static EarMeasurements any(UniformRandomProvider random) {
    double middle = random.nextDouble(16, 24);
    double fold = random.nextDouble(110, 138);
    return (random.nextBoolean() ? ADULT : CHILD)
        .withHelixMastoidMiddle_mm(middle)
        .withHelixMastoidUpper_mm(middle - random.nextDouble(-1, 3))
        .withHelixMastoidLower_mm(middle + random.nextDouble(-2, 1.5))
        .withFoldAngleUpper_deg(fold)
        .withFoldAngleMiddle_deg(fold - random.nextDouble(-2, 8))
        .withAuriculocephalicAngle_deg(1.75 * middle + random.nextDouble(-4, 4))
        .withBowlDepth_mm(0.45 * middle + random.nextDouble(0.5, 4));
  }

  @Test
  void nearlyEveryEarIsMetByASoundShape() {
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(20261128L);
    int met = 0;
    for (int i = 0; i < ANY; i++) {
      FittedEar fitted = EarFitter.nearest(any(random), MeshLevel.PLANNING);
      met += fitted.met() ? 1 : 0;
      String shape = fitted.auricle().shape().toString();
      assertTrue(new MeshFaults(fitted.auricle().mesh()).leastFacing() > 0.1, shape);
      assertEquals(List.of(), new SelfCrossing(fitted.auricle().mesh()).triangles(), shape);
    }
    assertTrue(met >= MOST, met + " of " + ANY + " met");
  }

  @Test
  void everyMeshLevelSamplesTheSameShape() {
    FittedEar planning = EarFitter.nearest(CHILD, MeshLevel.PLANNING);
    FittedEar fine = EarFitter.nearest(CHILD, MeshLevel.FINE);
    for (ShapeKnob knob : ShapeKnob.values()) {
      assertEquals(
          planning.auricle().shape().value(knob), fine.auricle().shape().value(knob), knob.name());
    }
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
