package auricle.material;

import java.util.List;
import java.util.stream.Stream;

/**
 * The layers of the auricle at a place, from the posterior skin (against the normal) to the
 * anterior skin.
 *
 * <p>The <i>sheet</i> is the cartilage with its perichondrium, or the soft core where there is no
 * cartilage: what a surgeon cuts and bites into. Heights are measured along the normal from the
 * reference surface, which is the neutral surface of bending of all layers that are there: so the
 * {@link #section} has no coupling between stretching and bending. (Exact, since all layers have
 * one Poisson's ratio.)
 *
 * @param posteriorSkin not there while undermined
 * @param posteriorPerichondrium on the posterior face of the cartilage
 * @param core cartilage, or skin and fat where there is none
 * @param anteriorPerichondrium on the anterior face of the cartilage
 * @param anteriorSkin adheres
 * @param poisson Poisson's ratio of all of them
 */
public record TissueLayers(
    TissueLayer posteriorSkin,
    TissueLayer posteriorPerichondrium,
    TissueLayer core,
    TissueLayer anteriorPerichondrium,
    TissueLayer anteriorSkin,
    double poisson) {

  /** With the posterior skin lifted off, so that it carries nothing. */
  public TissueLayers undermined() {
    return new TissueLayers(
        TissueLayer.NONE,
        posteriorPerichondrium,
        core,
        anteriorPerichondrium,
        anteriorSkin,
        poisson);
  }

  /** With the core and its perichondrium taken out: skin alone is left. */
  public TissueLayers withoutSheet() {
    return new TissueLayers(
        posteriorSkin, TissueLayer.NONE, TissueLayer.NONE, TissueLayer.NONE, anteriorSkin, poisson);
  }

  /**
   * With a share of the sheet shaved off its posterior face, perichondrium first.
   *
   * @param fraction of the sheet's thickness, in [0, 1)
   */
  public TissueLayers shavedBehind(double fraction) {
    double off = fraction * sheet_mm();
    double skin = Math.min(off, posteriorPerichondrium.thickness_mm());
    return new TissueLayers(
        posteriorSkin,
        posteriorPerichondrium.withThickness(posteriorPerichondrium.thickness_mm() - skin),
        core.withThickness(core.thickness_mm() - (off - skin)),
        anteriorPerichondrium,
        anteriorSkin,
        poisson);
  }

  /** Thickness of the sheet, mm: cartilage with its perichondrium. */
  public double sheet_mm() {
    return posteriorPerichondrium.thickness_mm()
        + core.thickness_mm()
        + anteriorPerichondrium.thickness_mm();
  }

  /** Thickness of all that is there, skin included, mm. */
  public double whole_mm() {
    return layers().stream().mapToDouble(TissueLayer::thickness_mm).sum();
  }

  /** Height of the sheet's posterior face above the reference surface, mm; below it: negative. */
  public double posteriorFace_mm() {
    return posteriorSkin.thickness_mm() - neutral_mm();
  }

  /** Height of the sheet's anterior face above the reference surface, mm. */
  public double anteriorFace_mm() {
    return posteriorFace_mm() + sheet_mm();
  }

  /**
   * Stiffness of the section about the reference surface.
   *
   * @throws IllegalArgumentException if no layer carries anything
   */
  public Section section() {
    LaminateBuilder laminate = Section.laminate();
    layers().forEach(l -> laminate.isotropic(l.modulus_mpa(), poisson, l.thickness_mm()));
    return laminate.offset(whole_mm() / 2 - neutral_mm()).build();
  }

  /** Height of the neutral surface above the lowest face, mm: Σ E t z / Σ E t. */
  private double neutral_mm() {
    double stiffness = 0;
    double moment = 0;
    double low = 0;
    for (TissueLayer layer : layers()) {
      double stretch = layer.modulus_mpa() * layer.thickness_mm();
      stiffness += stretch;
      moment += stretch * (low + layer.thickness_mm() / 2);
      low += layer.thickness_mm();
    }
    return stiffness > 0 ? moment / stiffness : low / 2;
  }

  private List<TissueLayer> layers() {
    return Stream.of(
            posteriorSkin, posteriorPerichondrium, core, anteriorPerichondrium, anteriorSkin)
        .filter(TissueLayer::there)
        .toList();
  }
}
