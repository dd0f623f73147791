package auricle.healing;

import auricle.energy.EnergyTerm;
import auricle.energy.ScaledTerm;
import auricle.energy.ShellLayer;
import auricle.energy.ShellTerms;
import auricle.mesh.Directors;
import auricle.mesh.RestShape;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A sheet of layers, each of which changes with time by a law of its own. Over a step each is an
 * elastic layer with a shape in which it is free of stress, so the strains of the sheet serve all
 * of them at once.
 */
final class Sheet implements TimePart {
  private final Directors directors;
  private final List<SheetLayer> layers;
  private final List<EnergyTerm> terms;
  private final Map<ShellLayer, ScaledTerm> couplings = new LinkedHashMap<>();
  private RestShape present;

  /**
   * @param shape of the sheet at time 0
   * @param layers the first covers all of it, and gives areas and where strain may jump
   */
  Sheet(RestShape shape, Directors directors, List<? extends SheetLayer> layers) {
    this.directors = directors;
    this.layers = List.copyOf(layers);
    present = shape;
    List<ShellLayer> elastic = this.layers.stream().map(SheetLayer::elastic).toList();
    terms = new ArrayList<>(ShellTerms.layered(elastic, directors));
    for (ShellLayer layer : elastic) {
      ShellTerms.coupling(layer, directors)
          .ifPresent(term -> couplings.put(layer, new ScaledTerm(term)));
    }
    terms.addAll(couplings.values());
  }

  @Override
  public List<EnergyTerm> terms() {
    return terms;
  }

  @Override
  public void aim(double from_s, double to_s) {
    layers.forEach(layer -> layer.aim(from_s, to_s, present));
    couplings.forEach((layer, term) -> term.scale(layer.share(), layer.share()));
  }

  @Override
  public void arrive(double[] u) {
    RestShape next = RestShape.of(present.topology(), u, directors);
    layers.forEach(layer -> layer.arrive(present, next));
    present = next;
  }
}
