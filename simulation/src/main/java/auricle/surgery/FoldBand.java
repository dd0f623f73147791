package auricle.surgery;

import java.util.function.IntToDoubleFunction;

/** A band along the fold line between two levels, at a distance from it. */
final class FoldBand {
  private final EarPlaces places;
  private final IntToDoubleFunction offset;
  private final double width;
  private final double top;
  private final double bottom;

  /**
   * @param offset_mm of the band's middle line from the fold on the profile of a triangle, mm
   */
  FoldBand(
      EarPlaces places,
      double fromLevel_percent,
      double toLevel_percent,
      IntToDoubleFunction offset_mm,
      double width_mm) {
    this.places = places;
    this.offset = offset_mm;
    this.width = width_mm;
    top = places.foldLength_mm(toLevel_percent);
    bottom = places.foldLength_mm(fromLevel_percent);
  }

  /** Length of the band along the fold, mm. */
  double length_mm() {
    return bottom - top;
  }

  /** Place along the band, -1 at its upper end, 1 at its lower end. */
  double place(int t) {
    return (2 * places.foldLengthOf_mm(t) - top - bottom) / (bottom - top);
  }

  /** Distance of a triangle's centre from the middle line, + towards the rim, mm. */
  double across_mm(int t) {
    return places.foldOffset_mm(t) - offset.applyAsDouble(t);
  }

  /** Share of a triangle that lies in it. */
  double share(int t) {
    if (!places.besideFold(t)) {
      return 0;
    }
    double size = places.size_mm(t);
    return Band.share(place(t) * length_mm() / 2, length_mm(), size)
        * Band.share(across_mm(t), width, size);
  }
}
