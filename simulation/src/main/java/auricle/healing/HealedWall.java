package auricle.healing;

import auricle.anatomy.Region;
import auricle.material.HealingTissue;
import auricle.material.LaminateBuilder;
import auricle.material.Section;
import auricle.material.SectionField;
import auricle.material.TissueLayer;
import auricle.material.TissueLayers;
import auricle.mesh.Directors;
import auricle.mesh.RestShape;
import auricle.mesh.Topology;
import auricle.surgery.EarBody;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What healing adds to the wall where the posterior skin was lifted off: a sheet of scar, and the
 * skin that the scar joins to the cartilage again. The stiffness of skin, scar and sheet together,
 * about their own neutral surface, less that of the sheet alone.
 */
final class HealedWall implements SectionField {
  private final int[] triangles;
  private final Topology topology;
  private final Section[] sections;

  HealedWall(EarBody body) {
    Topology whole = body.auricle().mesh().topology();
    triangles = IntStream.range(0, whole.triangleCount()).filter(body::undermined).toArray();
    int[] corners = new int[3 * triangles.length];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = whole.vertex(triangles[i / 3], i % 3);
    }
    topology = new Topology(whole.vertexCount(), corners);
    Map<Region, Section> byRegion = new EnumMap<>(Region.class);
    sections = new Section[triangles.length];
    for (int i = 0; i < triangles.length; i++) {
      sections[i] =
          byRegion.computeIfAbsent(
              body.auricle().region(triangles[i]), region -> added(body, region));
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
    return triangles.length == 0;
  }

  /** The healing triangles as a mesh of their own, on the vertices of the whole. */
  Topology topology() {
    return topology;
  }

  /** A shape of the whole on these triangles alone. */
  RestShape shape(double[] u, Directors directors) {
    return RestShape.of(topology, u, directors);
  }

  @Override
  public Section section(int triangle) {
    return sections[triangle];
  }

  @Override
  public double angle(int triangle) {
    return 0;
  }

  @Override
  public boolean joined(int triangle, int neighbour) {
    return true;
  }
}
