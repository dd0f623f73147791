package auricle.surgery;

import auricle.plan.RimWedge;

/**
 * A wedge taken from the rim and simply closed: the rest metric shrinks around the rim, most at the
 * free edge and not at all at the wedge's point, so that a disc becomes a cone and the ear cups.
 * What is taken out is spread along the rim over a band of its width / {@value #CLOSURE}.
 */
final class ClosedWedge implements Change {
  private static final double CLOSURE = 0.5;
  private static final double LEAST_BAND_MM = 5;

  private final RimWedge wedge;
  private final EarPlaces places;

  ClosedWedge(RimWedge wedge, EarPlaces places) {
    this.wedge = wedge;
    this.places = places;
  }

  @Override
  public void alter(AlteredSheet sheet) {
    double middle = places.rimLength_mm(wedge.level_percent());
    double band = Math.max(LEAST_BAND_MM, wedge.width_mm() / CLOSURE);
    for (int t = 0; t < places.triangleCount(); t++) {
      double deep = 1 - places.rimDistance_mm(t) / wedge.depth_mm();
      if (deep > 0 && places.onHelix(t)) {
        double away = places.rimLengthOf_mm(t) - middle;
        double share = Band.share(away, band, places.size_mm(t));
        sheet.shrinkAlong(t, share * deep * wedge.width_mm() / band);
      }
    }
  }
}
