package auricle.surgery;

import auricle.plan.FullThicknessIncision;

/**
 * A cut through the whole thickness along the fold: a free hinge. The stiffness against bending
 * across it falls to next to nothing in a band one millimetre wide, or one triangle where these are
 * larger; the edges stay together, as the skin in front keeps them.
 */
final class OpenedLine implements Change {
  /** Compliance of the band, as a multiple of that of the sheet. */
  private static final double FREE = 100;

  private static final double WIDTH_MM = 1;

  private final FullThicknessIncision incision;
  private final EarPlaces places;

  OpenedLine(FullThicknessIncision incision, EarPlaces places) {
    this.incision = incision;
    this.places = places;
  }

  @Override
  public void alter(AlteredSheet sheet) {
    for (int t = 0; t < places.triangleCount(); t++) {
      double width = Math.max(WIDTH_MM, places.size_mm(t));
      FoldBand band =
          new FoldBand(
              places,
              incision.fromLevel_percent(),
              incision.toLevel_percent(),
              i -> incision.fromFold_mm(),
              width);
      double share = places.region(t).hasCartilage() ? band.share(t) : 0;
      if (share > 0) {
        sheet.sections().soften(t, share * FREE);
      }
    }
  }
}
