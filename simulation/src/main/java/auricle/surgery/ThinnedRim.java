package auricle.surgery;

import auricle.plan.RimShaving;

/** The rim shaved thinner from behind, without closure: its section is thinned. */
final class ThinnedRim implements Change {
  /** How far in from the free edge the rim is shaved, mm; our own choice. */
  private static final double REACH_MM = 5;

  private final RimShaving shaving;
  private final EarPlaces places;
  private final EarWall wall;

  ThinnedRim(RimShaving shaving, EarPlaces places, EarWall wall) {
    this.shaving = shaving;
    this.places = places;
    this.wall = wall;
  }

  @Override
  public void alter(AlteredSheet sheet) {
    double middle = places.rimLength_mm(shaving.level_percent());
    for (int t = 0; t < places.triangleCount(); t++) {
      if (places.onHelix(t) && places.region(t).hasCartilage()) {
        double size = places.size_mm(t);
        double share =
            Band.share(places.rimLengthOf_mm(t) - middle, shaving.length_mm(), size)
                * Band.share(places.rimDistance_mm(t), 2 * REACH_MM, size);
        thin(sheet, t, share * shaving.depth_fraction());
      }
    }
  }

  private void thin(AlteredSheet sheet, int t, double fraction) {
    if (fraction > 0) {
      sheet.sections().replace(t, wall.layers(t).shavedBehind(fraction).section());
    }
  }
}
