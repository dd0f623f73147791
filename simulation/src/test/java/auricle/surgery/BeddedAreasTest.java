package auricle.surgery;

import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.Auricle;
import auricle.anatomy.MeshLevel;
import auricle.anatomy.ShapeParameters;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** An ear stands on the same area of head however finely it is meshed. */
class BeddedAreasTest {
  private static double area(MeshLevel level) {
    Auricle ear = Auricle.of(ShapeParameters.normalAdult(), level);
    double[] areas =
        BeddedAreas.of(ear.mesh(), ear.mesh().vertexSet(Auricle.ATTACHED).orElseThrow());
    return Arrays.stream(areas).sum();
  }

  @Test
  void theBeddedAreaHardlyChangesWithTheMesh() {
    double fine = area(MeshLevel.FINE);
    assertTrue(Math.abs(area(MeshLevel.PLANNING) - fine) < 0.03 * fine);
    assertTrue(Math.abs(area(MeshLevel.REFERENCE) - fine) < 0.01 * fine);
  }
}
