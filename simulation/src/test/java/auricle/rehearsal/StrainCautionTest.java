package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.assessment.Caution;
import auricle.assessment.CautionKind;
import auricle.material.Tissue;
import auricle.material.UsedRow;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Cartilage that is strained near to where it tears is told, with who says where that is. */
class StrainCautionTest {
  private static final List<UsedRow> ROWS = Tissue.standard().rows();

  private static final double TEARS =
      ROWS.stream()
          .filter(used -> used.row().slot().equals("cartilage.failure_strain"))
          .findFirst()
          .orElseThrow()
          .value();

  private static Optional<Caution> strainedTo(double shareOfTearing) {
    Position nowhere = new Position(0, 0, 0);
    Extreme strain =
        new Extreme(
            shareOfTearing * TEARS, 0, "superior_crus", 80, nowhere, "superior crus, upper third");
    return StrainCaution.of(strain, ROWS);
  }

  @Test
  void strainNearTearingIsToldWithItsPlaceAndSource() {
    Caution near = strainedTo(0.81).orElseThrow();
    assertEquals(CautionKind.STRAIN_NEAR_TEARING, near.kind());
    assertEquals(
        "The cartilage of the superior crus, upper third, is strained by 28 %, near the 35 % at which cartilage tears",
        near.words());
    assertEquals("upper", near.where());
    assertTrue(near.limit().source().contains("Richmon 2005"), near.limit().source());
    assertEquals(0.8 * TEARS, near.limit().value(), 1e-12);
  }

  @Test
  void beyondTearingIsSaidSo() {
    assertTrue(strainedTo(1.2).orElseThrow().words().contains("by 42 %, more than the 35 %"));
  }

  @Test
  void lessIsNot() {
    assertTrue(strainedTo(0.79).isEmpty());
  }
}
