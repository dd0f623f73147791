package auricle.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.testing.Check;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class TissueTest {
  private static final TissueKeys UNSCALED =
      TissueKeys.standard(35).withOverride("section.stiffness_scale", 1);

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
  void aGivenThicknessIsTakenAsItIs() throws Exception {
    TissueKeys keys =
        TissueKeys.standard(11)
            .withThickness(1.5)
            .withOverride("cartilage.thickness_mm", 0.9)
            .withOverride("cartilage.scapha.thickness_mm", 0.7);
    Tissue given = Tissue.of(MaterialTables.shipped(), keys);
    assertEquals(0.9, given.cartilage_mm("helix"));
    assertEquals(0.7, given.cartilage_mm("scapha"));
  }

  @Test
  void aChildIsThinnerNotSofter() throws Exception {
    Tissue child = Tissue.of(MaterialTables.shipped(), TissueKeys.standard(9));
    double share = child.cartilage_mm("helix") / tissue.cartilage_mm("helix");
    MaterialRow row = MaterialTables.shipped().row("age.thickness_factor_under_15").orElseThrow();
    Check.within(1e-12, share, row.value(), row.source() + ", derived");
    assertEquals(
        tissue.layers("helix").core().modulus_mpa(), child.layers("helix").core().modulus_mpa());
  }

  @Test
  void aChoiceForTheWholeEarHoldsInItsRegions() throws Exception {
    MaterialTables tables = MaterialTables.shipped();
    String slot = "cartilage.modulus_mpa";
    Tissue indented = Tissue.of(tables, UNSCALED.withRow(slot, "indentation"));
    assertEquals(
        tables.row("cartilage.helix.modulus_mpa@indentation").orElseThrow().value(),
        indented.layers("helix").core().modulus_mpa());
    assertEquals(
        tables.row(slot + "@indentation").orElseThrow().value(),
        indented.layers("scapha").core().modulus_mpa());
    Tissue septum = Tissue.of(tables, UNSCALED.withRow(slot, "septum_dynamic"));
    assertEquals(
        tables.row(slot + "@septum_dynamic").orElseThrow().value(),
        septum.layers("floor").core().modulus_mpa());
  }

  @Test
  void choicesThatCannotBeMetAreToldAllAtOnce() {
    TissueKeys keys =
        new TissueKeys(
            Map.of("cartilage.modulus_mpa", "septum_dynamik", "cartilage.poison", "a"),
            Map.of("cartilage.poisson", 0.7, "bite.knot_slak_mm", 0.1),
            -1,
            OptionalDouble.of(12));
    BadInputException refused =
        assertThrows(BadInputException.class, () -> Tissue.of(MaterialTables.shipped(), keys));
    List<String> lines = refused.findings().stream().map(Finding::line).toList();
    String all = String.join("\n", lines);
    assertEquals(6, lines.size(), all);
    assertTrue(all.contains("Did you mean 'septum_dynamic'?"), all);
    assertTrue(all.contains("Did you mean 'cartilage.poisson'?"), all);
    assertTrue(all.contains("/overrides/cartilage.poisson: 0.7"), all);
    assertTrue(all.contains("Did you mean 'bite.knot_slack_mm'?"), all);
    assertTrue(all.contains("/age_years: -1"), all);
    assertTrue(all.contains("/cartilage_thickness_mm: 12"), all);
  }

  @Test
  void absorbableThreadsLoseTheirStrength() {
    StrengthLeft left = tissue.thread("polydioxanone_4_0").orElseThrow().strengthLeft();
    MaterialTables tables = MaterialTables.shipped();
    MaterialRow at28 = tables.row("thread.polydioxanone.strength_left_day_28").orElseThrow();
    MaterialRow at56 = tables.row("thread.polydioxanone.strength_left_day_56").orElseThrow();
    Check.within(1e-12, left.at(28), at28.value(), at28.source());
    Check.within(1e-12, left.at(42), (at28.value() + at56.value()) / 2, "halfway on the line");
    assertEquals(0, left.at(100));
    assertEquals(1, tissue.thread("polyester_4_0").orElseThrow().strengthLeft().at(365));
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
