package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.material.MaterialTables;
import auricle.measurement.NamedValue;
import auricle.plan.Dose;
import auricle.plan.EarCase;
import auricle.plan.Operation;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Doses of random plans, turned by a step of their control and back. */
@Tag("slow")
class RandomTurnsTest {
  /** Where no knot is pulled anew, mm and deg. */
  private static final double BACK = 5e-3;

  /** A knot that is pulled anew is where it was but for how it was approached. */
  private static final double PULLED = 0.1;

  @ParameterizedTest
  @ValueSource(longs = {2, 15, 24, 29})
  void turnedBackTheEarIsWhereItWas(long seed) throws BadInputException {
    EarCase ear = RandomCase.withUsualShape(seed);
    EarCase next = turned(ear, new Random(seed));
    assertTrue(!next.equals(ear), "a dose is turned");
    thereAndBack(ear, next, BACK);
  }

  /** Corrected in small steps, this thread would have come to less than no length. */
  @Test
  void aTensionFarFromWhatSmallCorrectionsReachIsPulledAnew() throws BadInputException {
    EarCase ear = RandomCase.withUsualShape(38);
    int lobule = ear.plan().operations().size() - 1;
    while (!ear.plan().operations().get(lobule).kind().equals("lobule_suture")) {
      lobule--;
    }
    thereAndBack(
        ear, ear.withPlan(ear.plan().withDose(lobule, "tension_n", 0.518190864508328)), PULLED);
  }

  private static void thereAndBack(EarCase ear, EarCase next, double allowed)
      throws BadInputException {
    LiveEar live =
        LiveEar.of(
            ear, RehearsalSettings.tied(), MaterialTables.shipped(), RehearsalWatcher.SILENT);
    double[] before = figures(live.result().after());
    Optional<StepResult> there = live.turn(next, RehearsalWatcher.SILENT);
    assertTrue(there.isPresent() && there.get().outcome().converged(), "no rest there");
    double[] back = figures(live.turn(ear, RehearsalWatcher.SILENT).orElseThrow());
    for (int i = 0; i < before.length; i++) {
      assertTrue(Math.abs(back[i] - before[i]) < allowed, "off by " + (back[i] - before[i]));
    }
  }

  private static double[] figures(StepResult step) {
    return step.measures().figures().stream()
        .filter(f -> f.key().contains("mastoid") || f.key().contains("fold_angle"))
        .mapToDouble(NamedValue::value)
        .toArray();
  }

  private static EarCase turned(EarCase ear, Random random) {
    List<Operation> operations = ear.plan().operations();
    EarCase next = ear;
    for (int k = 0; k < 2; k++) {
      int i = random.nextInt(operations.size());
      List<Dose> doses = operations.get(i).doses();
      Dose dose = doses.get(random.nextInt(doses.size()));
      double value = dose.value() + (random.nextBoolean() ? 1 : -1) * dose.step();
      EarCase tried = next.withPlan(next.plan().withDose(i, dose.key(), value));
      next = tried.findings("").stream().anyMatch(Finding::isError) ? next : tried;
    }
    return next;
  }
}
