package auricle.surgery;

import auricle.anatomy.Auricle;
import auricle.anatomy.Region;
import auricle.material.Section;
import auricle.material.Tissue;
import auricle.material.TissueLayers;
import java.util.EnumMap;
import java.util.Map;

/** The layers of every triangle of an ear, with the posterior skin lifted off or not. */
public final class EarWall {
  private final Auricle auricle;
  private final Map<Region, TissueLayers> layers = new EnumMap<>(Region.class);
  private final Map<Region, Section> sections = new EnumMap<>(Region.class);

  /**
   * @param undermined whether the posterior skin is lifted off the cartilage and carries nothing
   */
  EarWall(Auricle auricle, Tissue tissue, boolean undermined) {
    this.auricle = auricle;
    for (Region region : Region.values()) {
      TissueLayers whole = tissue.layers(region.key());
      TissueLayers there =
          undermined && tissue.hasCartilage(region.key()) ? whole.undermined() : whole;
      layers.put(region, there);
      sections.put(region, there.section());
    }
  }

  /** Layers of a triangle. */
  public TissueLayers layers(int triangle) {
    return of(layers, triangle);
  }

  /** Section of a triangle before any cut; one instance for each region. */
  Section section(int triangle) {
    return of(sections, triangle);
  }

  private <T> T of(Map<Region, T> map, int triangle) {
    T found = map.get(auricle.region(triangle));
    if (found == null) {
      throw new IllegalStateException("no layers for " + auricle.region(triangle));
    }
    return found;
  }

  /** Thickness of what is cut and bitten into, mm. */
  double sheet_mm(int triangle) {
    return layers(triangle).sheet_mm();
  }

  /** Height of the posterior face of the sheet over the reference surface, mm; negative. */
  double posteriorFace_mm(int triangle) {
    return layers(triangle).posteriorFace_mm();
  }
}
