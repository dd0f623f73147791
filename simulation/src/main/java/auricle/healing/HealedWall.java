package auricle.healing;

import auricle.anatomy.Auricle;
import auricle.anatomy.Region;
import auricle.material.HealingTissue;
import auricle.material.LaminateBuilder;
import auricle.material.Section;
import auricle.material.SectionField;
import auricle.material.TissueLayer;
import auricle.material.TissueLayers;
import auricle.surgery.EarBody;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What healing adds to the wall where the posterior skin was lifted off: a sheet of scar, and the
 * skin that the scar joins to the cartilage again. The stiffness of skin, scar and sheet together,
 * about their own neutral surface, less that of the sheet alone.
 */
final class HealedWall implements SectionField {
  private final EarBody body;
  private final Map<Region, Section> sections = new EnumMap<>(Region.class);

  HealedWall(EarBody body) {
    this.body = body;
    Auricle auricle = body.auricle();
    for (int t = 0; t < auricle.mesh().topology().triangleCount(); t++) {
      if (covers(t)) {
        sections.computeIfAbsent(auricle.region(t), region -> added(body, region));
      }
    }
  }

  private static Section added(EarBody body, Region region) {
    TissueLayers layers = body.tissue().layers(region.key());
    HealingTissue healing = body.tissue().healing();
    List<TissueLayer> healed =
        List.of(
            layers.posteriorSkin(),
            new TissueLayer(healing.scarModulus_mpa(), healing.scarThickness_mm()),
            layers.posteriorPerichondrium(),
            layers.core(),
            layers.anteriorPerichondrium(),
            layers.anteriorSkin());
    Section middle = section(healed, layers.poisson(), 0);
    // B/A is how far the neutral surface lies over the middle
    double neutral = middle.stiffness(0, 3) / middle.stiffness(0, 0);
    return section(healed, layers.poisson(), -neutral).minus(layers.undermined().section());
  }

  private static Section section(List<TissueLayer> layers, double poisson, double offset) {
    LaminateBuilder laminate = Section.laminate().offset(offset);
    for (TissueLayer layer : layers) {
      if (layer.modulus_mpa() > 0 && layer.thickness_mm() > 0) {
        laminate.isotropic(layer.modulus_mpa(), poisson, layer.thickness_mm());
      }
    }
    return laminate.build();
  }

  /** Whether there is anything to heal. */
  boolean isEmpty() {
    return sections.isEmpty();
  }

  @Override
  public boolean covers(int triangle) {
    return body.undermined(triangle);
  }

  @Override
  public Section section(int triangle) {
    return Objects.requireNonNull(sections.get(body.auricle().region(triangle)));
  }

  @Override
  public double angle(int triangle) {
    return 0;
  }

  @Override
  public boolean joined(int triangle, int neighbour) {
    return covers(triangle) == covers(neighbour);
  }
}
