package auricle.viewer.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.plan.EarCase;
import auricle.rehearsal.RehearsalWatcher;
import auricle.scenario.ScenarioReader;
import auricle.viewer.viewmodel.FieldScale;
import auricle.viewer.viewmodel.Paint;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** What can be painted over the year, from the solver itself. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class YearFieldsTest {
  private final Rehearsed year;

  YearFieldsTest() throws Exception {
    Path file = Path.of("..", "scenarios", "bolster_alone.yaml");
    EarCase ear = ScenarioReader.shipped().read(file).scenario().ears().get(0).ear();
    SimulationRehearser solver = new SimulationRehearser();
    Rehearsed tied = solver.tied(ear, RehearsalWatcher.SILENT, r -> {}).orElseThrow();
    year = solver.overAYear(tied, 0, RehearsalWatcher.SILENT).orElseThrow();
  }

  /** Shares of the scale that is used all over the course. */
  private float most(Moment moment, Paint paint) {
    float[] shares = FieldScale.of(year, paint).shares(moment.surface(), paint);
    Arrays.sort(shares);
    return shares[shares.length - 1];
  }

  @Test
  void everyFieldIsKnownAtEveryMoment() {
    assertEquals(6, year.times().size());
    for (Paint paint : Paint.values()) {
      for (Moment m : year.course()) {
        assertTrue(
            !paint.isField() || m.surface().fields().containsKey(paint.field()),
            paint + ", " + m.label());
      }
    }
  }

  @Test
  void onOneScaleStressFadesOnceTheBolsterIsOff() {
    List<Moment> times = year.times();
    assertTrue(most(year.tied(), Paint.STRESS) > 0.9);
    for (Moment m : times.subList(2, times.size())) {
      float stress = most(m, Paint.STRESS);
      assertTrue(stress < 0.05 && stress > 0, m.label() + ": " + stress);
    }
  }

  @Test
  void changeIsOfTheStepAtTheOperationAndSinceTiedAfterIt() {
    assertEquals("Change in this step", Paint.STEP_CHANGE.words(false));
    assertEquals("Change since tied", Paint.STEP_CHANGE.words(true));
    Moment last = year.times().get(5);
    Paint change = Paint.STEP_CHANGE;
    double most_mm = most(last, change) * FieldScale.of(year, change).high();
    assertTrue(year.tied().surface().movedBy(last.surface(), 0.999 * most_mm));
    assertTrue(!year.tied().surface().movedBy(last.surface(), 1.001 * most_mm));
  }
}
