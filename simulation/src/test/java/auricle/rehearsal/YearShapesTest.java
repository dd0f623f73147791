package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.material.MaterialTables;
import auricle.material.Tissue;
import auricle.plan.EarCase;
import auricle.rehearsal.DeformedEar.Field;
import auricle.testing.Check;
import auricle.testing.ShippedEar;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Fields over the time after the operation, on a fold that a bolster alone holds for weeks. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class YearShapesTest {
  private static final List<Double> DAYS = List.of(0.0, 1.0, 7.0, 60.0);
  private static final List<Double> HELD = DAYS.subList(1, 3);

  private final LiveEar live;
  private final RehearsalResult year;

  YearShapesTest() throws Exception {
    EarCase ear = ShippedEar.of("bolster_alone");
    live =
        LiveEar.of(
            ear, RehearsalSettings.tied(), MaterialTables.shipped(), RehearsalWatcher.SILENT);
    year = year();
  }

  private RehearsalResult year() {
    RehearsalSettings usual = RehearsalSettings.tied();
    RehearsalResult found =
        live.healed(new RehearsalSettings(usual.mesh(), true, DAYS, 0, 1), RehearsalWatcher.SILENT);
    assertTrue(found.timeline().orElseThrow().converged());
    return found;
  }

  private float[] field(int moment, Field field) {
    return year.healed().get(moment).field(field);
  }

  private static int most(float[] values) {
    return IntStream.range(0, values.length)
        .reduce((a, b) -> values[b] > values[a] ? b : a)
        .orElseThrow();
  }

  @Test
  void asTiedNothingHasSettledAndEverythingIsAsAfterTheLastStep() {
    assertEquals(DAYS.size(), year.healed().size());
    int n = field(0, Field.STRAIN).length;
    assertArrayEquals(new float[n], field(0, Field.SETTLED_STRAIN), 1e-9f, "but for rounding");
    for (Field same : List.of(Field.STRAIN, Field.STRESS, Field.DISPLACEMENT)) {
      float[] step = year.after().shape().field(same);
      assertArrayEquals(step, field(0, same), 1e-4f * step[most(step)], same.key());
    }
  }

  /**
   * Where the shape is held, stress is to strain as the relaxed stiffness to the instant one, and
   * what remains of it fades with the time of remodelling; the rest of the strain has settled.
   */
  @Test
  void whereTheShapeIsHeldAStrainSettlesAsTheTissueRelaxesAndRemodels() {
    Tissue tissue = Tissue.standard();
    for (double days : HELD) {
      int moment = DAYS.indexOf(days);
      double kept =
          tissue.relaxation().remaining() * Math.exp(-days / tissue.healing().remodelling_days());
      int at = most(field(moment, Field.STRAIN));
      double strain = field(moment, Field.STRAIN)[at];
      double settled = field(moment, Field.SETTLED_STRAIN)[at];
      Check.close(settled / strain, 1 - kept, 0.005, "held strain of a Maxwell solid, computed");
      double grown = strain / year.after().shape().field(Field.STRAIN)[at];
      double stress = field(moment, Field.STRESS)[at];
      double first = year.after().shape().field(Field.STRESS)[at];
      Check.close(stress / first, kept * grown, 0.005, "the same, as the bend creeps a little");
    }
  }

  @Test
  void whatIsLetGoHasHardlyAnyStressAndTheStrainThatHadSettled() {
    float[] strain = field(3, Field.STRAIN);
    int at = most(strain);
    assertEquals(strain[at], field(3, Field.SETTLED_STRAIN)[at], 0.1 * strain[at]);
    float[] stress = field(3, Field.STRESS);
    float[] held = field(2, Field.STRESS);
    assertTrue(stress[most(stress)] < 0.1 * held[most(held)]);
  }

  @Test
  void changeCountsFromTheEndOfTheOperation() {
    float[] tied = year.after().shape().points();
    float[] now = year.healed().get(3).points();
    float[] change = field(3, Field.STEP_CHANGE);
    int v = most(change);
    double x = now[3 * v] - tied[3 * v];
    double y = now[3 * v + 1] - tied[3 * v + 1];
    double z = now[3 * v + 2] - tied[3 * v + 2];
    assertTrue(change[v] > 1, "it springs back");
    assertEquals(Math.sqrt(x * x + y * y + z * z), change[v], 1e-4);
  }

  /** The ear that is worked on stands as it was tied, or a second year would be another. */
  @Test
  void theEarIsLeftAsItWasTied() {
    RehearsalResult again = year();
    for (int moment = 0; moment < DAYS.size(); moment++) {
      for (Field field : Field.values()) {
        assertArrayEquals(
            field(moment, field), again.healed().get(moment).field(field), field.key());
      }
    }
  }
}
