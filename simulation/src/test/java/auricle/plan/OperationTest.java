package auricle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.Finding;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class OperationTest {

  static List<Operation> all() {
    return Operations.all();
  }

  private static List<Finding> errors(Operation operation) {
    return operation.findings("/plan/0").stream().filter(Finding::isError).toList();
  }

  @Test
  void everyKindIsTried() {
    Set<Class<?>> tried = new HashSet<>();
    Operations.all().forEach(o -> tried.add(o.getClass()));
    Set<Class<?>> known = new HashSet<>(List.of(Operation.class.getPermittedSubclasses()));
    known.remove(TiedOperation.class);
    known.addAll(List.of(TiedOperation.class.getPermittedSubclasses()));
    assertEquals(known, tried);
  }

  @ParameterizedTest
  @MethodSource("all")
  void theUsualDosesAreAllowed(Operation operation) {
    assertEquals(List.of(), errors(operation));
  }

  @ParameterizedTest
  @MethodSource("all")
  void aDoseChangesNothingButItself(Operation operation) {
    for (Dose dose : operation.doses()) {
      double changed = (dose.low() + 2 * dose.high()) / 3;
      Operation other = operation.withDose(dose.key(), changed);
      assertEquals(changed, other.dose(dose.key()).value(), dose.key());
      assertNotEquals(operation, other, dose.key());
      assertEquals(operation, other.withDose(dose.key(), dose.value()), dose.key());
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void nameAndStateChangeNothingElse(Operation operation) {
    Operation other = operation.withName("other").withEnabled(false);
    assertEquals("other", other.name());
    assertEquals(operation, other.withName(operation.name()).withEnabled(true));
  }

  @ParameterizedTest
  @MethodSource("all")
  void keysAreTheirOwnAndStepsFitTheirBounds(Operation operation) {
    Set<String> keys = new HashSet<>();
    for (Dose dose : operation.doses()) {
      assertTrue(keys.add(dose.key()), dose.key());
      assertTrue(dose.step() > 0 && dose.step() <= (dose.high() - dose.low()) / 5, dose.key());
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void aDoseOutOfItsBoundsIsToldWithItsReason(Operation operation) {
    for (Dose dose : operation.doses()) {
      for (double value : new double[] {dose.low() - 1, dose.high() + 1, Double.NaN}) {
        List<Finding> found = errors(operation.withDose(dose.key(), value));
        assertTrue(
            found.stream().anyMatch(f -> f.where().contains(dose.key()) && !f.remedy().isEmpty()),
            () -> dose.key() + " " + value + ": " + found);
      }
    }
  }

  @Test
  void allThatIsWrongIsToldAtOnce() {
    Operation bad =
        Scoring.usual(" ")
            .withDose("depth_fraction", 0.9)
            .withDose("from_level_percent", 90)
            .withDose("spacing_mm", -1);
    assertEquals(4, errors(bad).size());
  }

  @Test
  void bitesOnTheWrongSideOfTheFoldAreRefused() {
    Operation wrong = Operations.foldSuture().withDose("scapha_upper_from_fold_mm", -4);
    assertEquals(1, errors(wrong).size());
    assertTrue(errors(wrong).get(0).line().contains("towards the rim"));
  }

  @Test
  void anUpperBiteBelowTheLowerOneIsRefused() {
    Operation wrong = Operations.foldSuture().withDose("concha_upper_level_percent", 50);
    assertEquals(1, errors(wrong).size());
  }

  @Test
  void aTieIsToldAtItsPlaceInTheFile() {
    Operation wrong = Operations.foldSuture().withTie(new Tie.Tension(50));
    assertEquals("/plan/0/tie/tension_n", errors(wrong).get(0).where());
  }

  @Test
  void anUnknownDoseIsAnErrorOfTheProgram() {
    assertThrows(IllegalArgumentException.class, () -> Scoring.usual("s").withDose("gap_mm", 1));
  }

  @Test
  void aSquareSutureSpansFromLineToLine() {
    assertEquals(8, Operations.foldSuture().span_mm());
    assertEquals(75, Operations.foldSuture().level_percent());
  }
}
