package auricle.measurement;

import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.Auricle;
import auricle.anatomy.MeshLevel;
import auricle.anatomy.ShapeKnob;
import auricle.anatomy.ShapeParameters;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** At rest every figure is read alike on every mesh: to 1e-6 mm or deg. */
class MeshConvergenceTest {
  private static final double ROUNDING = 1e-6;

  static List<ShapeParameters> ears() {
    ShapeParameters normal = ShapeParameters.normalAdult();
    return List.of(
        normal,
        normal
            .with(ShapeKnob.HEIGHT, 57)
            .with(ShapeKnob.WIDTH, 31)
            .with(ShapeKnob.FOLD_UPPER, 135)
            .with(ShapeKnob.FOLD_MIDDLE, 130),
        normal.with(ShapeKnob.BOWL_DEPTH, 17).with(ShapeKnob.LEAN_MIDDLE, 55));
  }

  @ParameterizedTest
  @MethodSource("ears")
  void everyFigureIsTheSameOnAFinerMesh(ShapeParameters shape) {
    Measures planning = measured(shape, MeshLevel.PLANNING);
    Measures fine = measured(shape, MeshLevel.FINE);
    Map<Figure, Double> off = new EnumMap<>(Figure.class);
    for (Figure figure : Figure.values()) {
      double change = Math.abs(figure.of(fine) - figure.of(planning));
      if (change > ROUNDING) {
        off.put(figure, change);
      }
    }
    assertTrue(off.isEmpty(), () -> "changed too much: " + off);
  }

  private static Measures measured(ShapeParameters shape, MeshLevel level) {
    Auricle ear = Auricle.of(shape, level);
    return new EarMeasurer(ear).measure(ear.mesh().unknowns());
  }
}
