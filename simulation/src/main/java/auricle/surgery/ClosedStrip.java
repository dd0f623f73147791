package auricle.surgery;

import auricle.material.SeamTissue;
import auricle.plan.BowlStrip;

/**
 * A strip taken from the wall of the bowl and closed: the rest metric shrinks across it by its
 * width, the curvature of what stays is kept, and the seam is more compliant than the sheet.
 *
 * <p>A strip as narrow as a triangle cannot vanish from a mesh. The width w that is taken out is
 * spread over a band of w / {@value #CLOSURE}, and at least {@value #LEAST_BAND_MM} mm, which
 * shrinks to what is left of it; its two edges then lie as the edges of the wound do.
 */
final class ClosedStrip implements Change {
  private static final double CLOSURE = 0.6;
  private static final double LEAST_BAND_MM = 4;

  private final BowlStrip strip;
  private final EarPlaces places;
  private final SeamTissue seam;
  private final FoldBand band;
  private final double bandWidth;

  ClosedStrip(BowlStrip strip, EarPlaces places, SeamTissue seam) {
    this.strip = strip;
    this.places = places;
    this.seam = seam;
    bandWidth = Math.max(LEAST_BAND_MM, strip.width_mm() / CLOSURE);
    band =
        new FoldBand(
            places,
            strip.fromLevel_percent(),
            strip.toLevel_percent(),
            t -> places.wallOffset_mm(places.around(t), strip.wall_percent()),
            bandWidth);
  }

  @Override
  public void alter(AlteredSheet sheet) {
    for (int t = 0; t < places.triangleCount(); t++) {
      double share = band.share(t);
      if (share > 0) {
        double shrink = share * width_mm(band.place(t)) / bandWidth;
        sheet.shrinkAcross(t, shrink);
        double compliance = (1 / seam.bendingShare() - 1) * seam.width_mm();
        sheet.sections().soften(t, share * compliance / (bandWidth - strip.width_mm()));
      }
    }
  }

  /** Width at a place from −1 to 1: narrowing to nothing at both ends over the taper. */
  private double width_mm(double place) {
    double fromEnd = Math.max(0, 1 - Math.abs(place));
    double narrow = strip.taper();
    return strip.width_mm() * (narrow > 0 ? Math.min(1, fromEnd / narrow) : 1);
  }
}
