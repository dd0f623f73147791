package auricle.diagnostics;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class FindingsTest {
  private static final List<String> KEYS = List.of("thickness_mm", "young_mpa", "poisson", "set");

  @Test
  void aMistypedNameFindsItsNeighbour() {
    assertEquals("poisson", NearestName.of("poison", KEYS).orElseThrow());
    assertEquals("young_mpa", NearestName.of("yuong_mpa", KEYS).orElseThrow());
    assertEquals(1, NearestName.distance("yuong", "young"));
  }

  @Test
  void aKeyWithAnotherUnitFindsTheKnownOne() {
    assertEquals("thickness_mm", NearestName.of("thickness_inches", KEYS).orElseThrow());
  }

  @Test
  void aStrangeNameIsToldTheKnownOnes() {
    assertTrue(NearestName.of("colour", KEYS).isEmpty());
    assertEquals("Known: poisson, set, thickness_mm, young_mpa", NearestName.hint("colour", KEYS));
  }

  @Test
  void onlyErrorsStopAndAllAreTold() {
    Findings findings = new Findings();
    findings.warning("a.yaml", "odd", "", "");
    assertDoesNotThrow(findings::stopIfErrors);
    findings.error("a.yaml line 2", "x", "a number", "Write one.");
    findings.error("a.yaml line 3", "y", "a number", "");
    BadInputException bad = assertThrows(BadInputException.class, findings::stopIfErrors);
    assertEquals(3, bad.findings().size());
    assertTrue(bad.toString().contains("a.yaml line 2: x; expected a number. Write one."));
  }
}
