package auricle.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.testing.Check;
import org.junit.jupiter.api.Test;

class TissueTest {
  private final Tissue tissue = Tissue.standard();

  /** D = Σ E (z₂³ − z₁³) / 3(1 − ν²) about the neutral surface Σ E t z = 0, by hand. */
  @Test
  void theSectionBendsAsItsLayersTogether() {
    TissueLayers l = tissue.layers("antihelix");
    TissueLayer[] layers = {
      l.posteriorSkin(),
      l.posteriorPerichondrium(),
      l.core(),
      l.anteriorPerichondrium(),
      l.anteriorSkin()
    };
    double stretch = 0;
    double moment = 0;
    double low = 0;
    for (TissueLayer layer : layers) {
      stretch += layer.modulus_mpa() * layer.thickness_mm();
      moment += layer.modulus_mpa() * layer.thickness_mm() * (low + layer.thickness_mm() / 2);
      low += layer.thickness_mm();
    }
    double z = -moment / stretch;
    double bending = 0;
    for (TissueLayer layer : layers) {
      double top = z + layer.thickness_mm();
      bending += layer.modulus_mpa() * (top * top * top - z * z * z) / 3;
      z = top;
    }
    double plane = 1 - l.poisson() * l.poisson();
    Section section = tissue.section("antihelix");
    String source = "closed form of a layered plate about its neutral surface";
    Check.within(1e-12, section.stiffness(0, 0), stretch / plane, source);
    Check.within(1e-12, section.stiffness(3, 3), bending / plane, source);
    Check.within(1e-12, section.stiffness(4, 3), l.poisson() * bending / plane, source);
    assertFalse(section.coupled());
    Check.within(1e-12, l.anteriorFace_mm() - l.posteriorFace_mm(), l.sheet_mm(), "thickness");
  }

  @Test
  void liftedSkinCarriesNothing() {
    for (String region : Quantities.REGIONS) {
      double whole = tissue.section(region).stiffness(3, 3);
      double lifted = tissue.underminedSection(region).stiffness(3, 3);
      assertTrue(tissue.hasCartilage(region) ? lifted < whole : lifted == whole, region);
    }
  }

  @Test
  void aMeasuredThicknessScalesEveryRegion() throws Exception {
    Tissue thick = Tissue.of(MaterialTables.shipped(), TissueKeys.standard(35).withThickness(1.5));
    double scale = thick.cartilage_mm("floor") / tissue.cartilage_mm("floor");
    Check.within(1e-12, thick.cartilage_mm("floor"), 1.5, "as measured");
    Check.within(1e-12, thick.cartilage_mm("helix") / tissue.cartilage_mm("helix"), scale, "floor");
  }

  @Test
  void everyThreadHasItsNumbers() {
    for (String key : tissue.threadKeys()) {
      ThreadRow thread = tissue.thread(key).orElseThrow();
      assertTrue(thread.axialStiffness_n() > 0 && thread.knotPull_n() > 0, key);
      assertEquals(1, thread.strengthLeft().at(0));
    }
    assertTrue(tissue.thread("polyester_4_0").isPresent());
    assertTrue(tissue.thread("polyester_9_0").isEmpty());
    assertFalse(tissue.thread("polyester_4_0").orElseThrow().strengthLeft().absorbable());
  }

  @Test
  void everyNumberOfTheStandardTissueCanBeRead() {
    assertTrue(tissue.relaxation().remaining() > 0.5);
    assertTrue(tissue.bite("2_0").tearThrough_n() > 0);
    assertTrue(tissue.healing().adhering_days() > 0);
    assertTrue(tissue.head().normal_mpa_per_mm() > 0);
    assertTrue(tissue.seam().width_mm() > 0);
    assertTrue(tissue.surfaceStress().layerShare() > 0);
    assertTrue(tissue.rows().size() > 40);
  }
}
