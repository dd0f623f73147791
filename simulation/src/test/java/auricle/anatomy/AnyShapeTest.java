package auricle.anatomy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/**
 * Shapes at random over the whole bounds of all knobs at once. A few such shapes, far from any ear,
 * have a triangle that is turned over: of these twelve none has.
 */
class AnyShapeTest {
  private static final int SHAPES = 12;

  @Test
  void shapesWithinTheBoundsAreSound() {
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(20261125L);
    for (int i = 0; i < SHAPES; i++) {
      Map<ShapeKnob, Double> values = new EnumMap<>(ShapeKnob.class);
      for (ShapeKnob knob : ShapeKnob.values()) {
        values.put(knob, random.nextDouble(knob.low(), knob.high()));
      }
      check(new ShapeParameters(values));
    }
  }

  @Test
  void everyKnobMayStandAtEitherEndByItself() {
    for (ShapeKnob knob : ShapeKnob.values()) {
      List.of(knob.least(), knob.low(), knob.high(), knob.most())
          .forEach(end -> check(ShapeParameters.normalAdult().with(knob, end)));
    }
  }

  private static void check(ShapeParameters shape) {
    Auricle ear = Auricle.of(shape, MeshLevel.PLANNING);
    MeshFaults faults = new MeshFaults(ear.mesh());
    assertTrue(faults.leastFacing() > 0.1, () -> "a triangle is turned over: " + shape);
    assertTrue(faults.leastClearance() > 1, () -> "the ear enters the head: " + shape);
    List<Integer> crossed = new SelfCrossing(ear.mesh()).triangles();
    assertEquals(List.of(), crossed, () -> "the ear passes through itself: " + shape);
  }

  @Test
  void aValueOutsideItsBoundsIsRefused() {
    ShapeParameters normal = ShapeParameters.normalAdult();
    double tooDeep = ShapeKnob.BOWL_DEPTH.high() + 1;
    assertThrows(IllegalArgumentException.class, () -> normal.with(ShapeKnob.BOWL_DEPTH, tooDeep));
    assertEquals(
        ShapeKnob.BOWL_DEPTH.high(),
        normal.withWithin(ShapeKnob.BOWL_DEPTH, tooDeep).value(ShapeKnob.BOWL_DEPTH));
  }
}
