package auricle.testing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReferenceTableTest {
  @Test
  void columnsAreReadByName() {
    ReferenceTable table = ReferenceTable.parse("t", "# who, when\n# what\na, b\n1,-2e-3\n3,\n");
    assertEquals("who, when", table.provenance().get(0));
    assertEquals(2, table.provenance().size());
    assertArrayEquals(new double[] {1, 3}, table.column("a"));
    assertArrayEquals(new double[] {-2e-3, Double.NaN}, table.column("b"));
  }

  @Test
  void whatIsNotThereIsRefused() {
    ReferenceTable table = ReferenceTable.parse("t", "a,b,b\n1,x,2\n");
    assertThrows(IllegalArgumentException.class, () -> table.column("c"));
    assertThrows(IllegalArgumentException.class, () -> table.column("b"));
    assertThrows(
        IllegalArgumentException.class, () -> ReferenceTable.parse("t", "a\nx\n").value(0, "a"));
    assertThrows(IllegalArgumentException.class, () -> ReferenceTable.parse("t", "a,b\n1\n"));
    assertThrows(IllegalArgumentException.class, () -> ReferenceTable.parse("t", "# a\na,b\n"));
    assertThrows(IllegalArgumentException.class, () -> ReferenceTable.named("none.csv"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bimetal_timoshenko1925.csv",
        "cone_from_removed_wedge.csv",
        "elastica_cantilever_tip_force.csv",
        "groove_strip_pure_moment.csv",
        "hinge_tendon_elastic.csv",
        "hinge_tendon_inextensible.csv",
        "plates_rectangular_nu0.3_computed.csv",
        "surface_stress_release_three_layer.csv",
        "sze31_cantilever_end_shear.csv",
        "sze32_cantilever_end_moment.csv",
        "sze33_slit_annular_plate.csv",
        "sze34_hemisphere_18deg_hole.csv",
        "sze38a_hinged_roof_h12.7_isotropic.csv",
        "sze38b_hinged_roof_h12.7_0_90_0.csv",
      })
  void everyTableSaysWhereItsNumbersComeFrom(String name) {
    ReferenceTable table = ReferenceTable.named(name);
    assertFalse(table.provenance().isEmpty(), name);
    assertTrue(table.size() > 3, name);
    table.columns().forEach(table::column);
  }
}
