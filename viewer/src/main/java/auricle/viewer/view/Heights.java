package auricle.viewer.view;

import auricle.anatomy.Level;
import auricle.viewer.scene.EarSurface;
import auricle.viewer.scene.SectionCut;
import auricle.viewer.scene.Spot;
import auricle.viewer.task.Moment;
import java.util.Comparator;
import java.util.Optional;

/**
 * Heights on a surface, whose ends are looked for once.
 *
 * @param low_mm lowest point
 * @param high_mm highest point
 */
record Heights(double low_mm, double high_mm) {
  static Heights of(EarSurface s) {
    return new Heights(SectionCut.height_mm(s, 0), SectionCut.height_mm(s, 100));
  }

  /** Where a place stands, percent from the lowest point to the highest. */
  double percent(Spot spot) {
    return 100 * (spot.z_mm() - low_mm) / (high_mm - low_mm);
  }

  /** The place on the rim that is nearest to a level. */
  static Optional<Spot> onRim(Moment m, Level level) {
    Heights heights = of(m.surface());
    return m.line("rim").stream()
        .min(Comparator.comparingDouble(s -> Math.abs(heights.percent(s) - level.heightPercent())));
  }
}
