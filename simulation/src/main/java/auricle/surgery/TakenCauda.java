package auricle.surgery;

import auricle.anatomy.Region;
import auricle.plan.CaudaExcision;

/** Cartilage of the cauda helicis taken away from its tip: skin alone is left there. */
final class TakenCauda implements Change {
  private final CaudaExcision excision;
  private final EarPlaces places;
  private final EarWall wall;

  TakenCauda(CaudaExcision excision, EarPlaces places, EarWall wall) {
    this.excision = excision;
    this.places = places;
    this.wall = wall;
  }

  @Override
  public void alter(AlteredSheet sheet) {
    for (int t : places.triangles(Region.CAUDA_HELICIS)) {
      if (places.fromCaudaTip_mm(t) < excision.length_mm()) {
        sheet.sections().replace(t, wall.layers(t).withoutSheet().section());
      }
    }
  }
}
