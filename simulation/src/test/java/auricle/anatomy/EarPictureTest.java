package auricle.anatomy;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Draws ears from all sides into {@code target/ears}, to be looked at. */
class EarPictureTest {
  private static final Color SKIN = new Color(232, 190, 165);
  private static final double THICKNESS = 2.4;
  private static final double SOFT = 1.8;

  /** Invented ears. */
  enum Ear {
    NORMAL(Map.of()),
    CHILD(Map.of(ShapeKnob.HEIGHT, 54.0, ShapeKnob.WIDTH, 30.0)),
    PROMINENT(
        Map.of(
            ShapeKnob.FOLD_UPPER, 132.0, ShapeKnob.FOLD_MIDDLE, 132.0, ShapeKnob.BOWL_DEPTH, 15.0)),
    WELL_FOLDED(Map.of(ShapeKnob.FOLD_UPPER, 90.0, ShapeKnob.FOLD_MIDDLE, 95.0)),
    PROMINENT_LOBULE(Map.of(ShapeKnob.LOBULE_SLOPE, 30.0));

    private final ShapeParameters shape;

    Ear(Map<ShapeKnob, Double> values) {
      shape = new ShapeParameters(values);
    }
  }

  @ParameterizedTest
  @EnumSource(Ear.class)
  void anEarIsDrawnFromAllSides(Ear kind) throws IOException {
    Auricle ear = Auricle.of(kind.shape, MeshLevel.PLANNING);
    EarSolid solid = new EarSolid(ear.mesh(), thickness(ear));
    List<BufferedImage> images = new ArrayList<>();
    for (EarPicture.View view : EarPicture.View.values()) {
      images.add(new EarPicture(view).head().draw(solid, t -> SKIN).image());
    }
    Path file = Path.of("target", "ears", kind.name().toLowerCase(java.util.Locale.ROOT) + ".png");
    EarPicture.write(file, images.toArray(BufferedImage[]::new));
    for (BufferedImage image : images) {
      int[] pixels =
          image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
      assertTrue(Arrays.stream(pixels).distinct().count() > 100, "the picture is empty");
    }
  }

  /** Skin and cartilage; more on the lobule. */
  private static double[] thickness(Auricle ear) {
    double[] thickness = new double[ear.mesh().vertexCount()];
    for (int v = 0; v < thickness.length; v++) {
      double around = ear.chart().around(v);
      double across = ear.chart().across(v);
      double lobule = Steps.rise((around - 0.84) / 0.08) * Steps.fall((around - 1.03) / 0.06);
      thickness[v] = THICKNESS + SOFT * lobule * Steps.rise((across - 0.55) / 0.15);
    }
    return thickness;
  }
}
