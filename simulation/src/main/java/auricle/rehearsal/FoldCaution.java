package auricle.rehearsal;

import auricle.anatomy.Auricle;
import auricle.assessment.Caution;
import auricle.assessment.CautionKind;
import auricle.assessment.Limit;
import auricle.assessment.Limits;
import java.util.Locale;
import java.util.Optional;

/**
 * The caution that goes with an ear that is folded more sharply than its mesh can follow. Curvature
 * is taken from sines of tilts, which fall behind the turn along an edge: what such a fold resists,
 * and how it lies, is then that of the mesh and not of the ear.
 */
final class FoldCaution {
  private final float[] normals;
  private double largest_deg;
  private int where;

  private FoldCaution(DeformedEar ear) {
    normals = ear.normals();
    for (int t = 0; t < ear.triangleCount(); t++) {
      for (int i = 0; i < 3; i++) {
        look(t, turn_deg(ear.corner(t, i), ear.corner(t, (i + 1) % 3)));
      }
    }
  }

  /**
   * @param ear as it is after the plan
   * @param auricle its regions
   */
  static Optional<Caution> of(DeformedEar ear, Auricle auricle) {
    FoldCaution found = new FoldCaution(ear);
    Limit limit = Limits.shipped().of("turn_along_an_edge");
    return found.largest_deg > limit.value()
        ? Optional.of(found.caution(limit, auricle))
        : Optional.empty();
  }

  private void look(int triangle, double turn_deg) {
    if (turn_deg > largest_deg) {
      largest_deg = turn_deg;
      where = triangle;
    }
  }

  private double turn_deg(int a, int b) {
    double cosine = 0;
    for (int i = 0; i < 3; i++) {
      cosine += (double) normals[3 * a + i] * normals[3 * b + i];
    }
    return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cosine))));
  }

  private Caution caution(Limit limit, Auricle auricle) {
    String words =
        String.format(
            Locale.ROOT,
            "The %s, is folded by %.0f deg along one edge of the mesh, more than the %.0f that it can follow: figures from near there are doubtful",
            Extreme.place(auricle, where),
            largest_deg,
            limit.value());
    String third = Extreme.third(auricle.chart().heightPercent(where)).key();
    return new Caution(CautionKind.FOLDED_BEYOND_MESH, words, largest_deg, limit, third);
  }
}
