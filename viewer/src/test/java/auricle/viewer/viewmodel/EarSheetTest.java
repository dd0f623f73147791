package auricle.viewer.viewmodel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.EarMeasurements;
import auricle.anatomy.Side;
import auricle.diagnostics.BadInputException;
import auricle.plan.EarCase;
import auricle.plan.EarMeasure;
import auricle.plan.Plan;
import auricle.plan.PressTest;
import auricle.plan.Target;
import auricle.plan.TissueChoice;
import auricle.scenario.Scenario;
import auricle.scenario.ScenarioReader;
import auricle.scenario.ScenarioWriter;
import auricle.viewer.task.Rehearsed;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Measurements, tissue and target on the desk, and the two sides of a head. */
class EarSheetTest {
  private static final String MODULUS = "cartilage.modulus_mpa";

  private final Desk desk = new Desk(Document.of(Scenario.of("test", ear())));
  private final Solving solving = new Solving(desk, new StandInRehearser(), Runnable::run);
  private final EarSheet sheet = new EarSheet(desk, solving);

  private static EarCase ear() {
    return new EarCase(
        EarMeasurements.normalAdult(),
        TissueChoice.standard(),
        Plan.of(Kind.FOLD_SUTURE.usual("upper suture")),
        Target.usual());
  }

  @AfterEach
  void close() {
    solving.close();
  }

  @Test
  void aTurnedMeasurementIsUndoneAsOne() {
    double before = sheet.ear().ear().height_mm();
    sheet.measure(EarMeasure.HEIGHT, before + 1);
    sheet.measure(EarMeasure.HEIGHT, before + 2);
    sheet.endTurn();
    assertEquals(before + 2, sheet.ear().ear().height_mm());
    desk.undo();
    assertEquals(before, sheet.ear().ear().height_mm());
  }

  @Test
  void aTurnedDoseIsNoNewsForTheFormsOfTheEar() {
    AtomicInteger told = new AtomicInteger();
    sheet.follow(o -> told.incrementAndGet());
    new PlanSteps(desk).turn("tension_n", 0.7);
    assertEquals(0, told.get());
    sheet.measure(EarMeasure.HEIGHT, sheet.ear().ear().height_mm() + 1);
    assertEquals(1, told.get());
    sheet.aim(Aim.UPPER, 10, 11);
    assertEquals(2, told.get());
  }

  @Test
  void whatCannotBeIsSaidBesideItsFieldAlone() {
    sheet.measure(EarMeasure.HEIGHT, 630);
    assertFalse(sheet.findings("height_mm").isEmpty());
    assertTrue(sheet.findings("width_mm").isEmpty());
    sheet.aim(Aim.UPPER, 12, 10);
    assertTrue(sheet.findings("target/" + Aim.UPPER.key()).get(0).contains("lesser value first"));
    assertTrue(sheet.findings("target/" + Aim.LOWER.key()).isEmpty());
  }

  @Test
  void everyAimIsChangedByItself() {
    for (Aim aim : Aim.values()) {
      double low = aim.of(sheet.ear().target()).low() + 0.5;
      sheet.aim(aim, low, low + 1);
      assertEquals(low, aim.of(sheet.ear().target()).low(), aim.label());
      long changed =
          java.util.Arrays.stream(Aim.values())
              .filter(a -> !a.of(sheet.ear().target()).equals(a.of(Target.usual())))
              .count();
      assertEquals(1, changed, aim.label());
      desk.undo();
    }
  }

  @Test
  void aRowOfTheTablesTakesThePlaceOfANumberAndBack() {
    sheet.number(MODULUS, 2.5);
    assertEquals(Map.of(MODULUS, 2.5), sheet.ear().tissue().overrides());
    sheet.row(MODULUS, "indentation");
    assertEquals(Map.of(), sheet.ear().tissue().overrides());
    assertEquals(Map.of(MODULUS, "indentation"), sheet.ear().tissue().rows());
    sheet.row(MODULUS, "");
    assertEquals(TissueChoice.standard(), sheet.ear().tissue());
    sheet.press(Optional.of(new PressTest(50, 5, 0.1)));
    assertTrue(sheet.ear().tissue().press().isPresent());
  }

  @Test
  void oneEarStandsBesideItsMirrorImageBefore() throws InterruptedException {
    assertTrue(solving.settle(20_000));
    Rehearsed r = solving.result().get().orElseThrow();
    Sides sides = Sides.of(r, r.tied(), Optional.empty(), false);
    assertEquals(Optional.of(r.tied()), sides.right());
    assertEquals(Optional.of(r.before()), sides.left());
    Sides.Row upper = sides.rows().get(0);
    assertTrue(upper.difference() < 0);
    assertEquals(Math.abs(upper.difference()) <= 3, upper.within());
  }

  @Test
  void theOtherEarOfAPairIsWorkedOutOnlyWhileBothAreLookedAt() throws InterruptedException {
    EarCase left = ear().withEar(EarMeasurements.normalAdult().withSide(Side.LEFT));
    List<auricle.scenario.ScenarioEar> both =
        List.of(
            new auricle.scenario.ScenarioEar(ear(), auricle.scenario.Expected.NONE),
            new auricle.scenario.ScenarioEar(left, auricle.scenario.Expected.NONE));
    Desk pair = new Desk(Document.of(new Scenario("pair", "", both, List.of())));
    try (OtherSide other = new OtherSide(pair, StandInRehearser::new, Runnable::run)) {
      assertTrue(other.other().isPresent());
      assertTrue(other.result().get().isEmpty());
      other.look(true);
      assertTrue(other.settle(20_000));
      assertEquals(Side.LEFT, other.result().get().orElseThrow().ear().ear().side());
    }
  }

  @Test
  void theSideOfAnEarIsChangedAndUndone() {
    assertEquals(Side.RIGHT, sheet.side());
    sheet.side(Side.LEFT);
    assertEquals(Side.LEFT, sheet.side());
    assertEquals(1, desk.document().get().scenario().ears().size());
    desk.undo();
    assertEquals(Side.RIGHT, sheet.side());
  }

  @Test
  void aSecondEarIsTheMirrorImageUntilItIsChanged() {
    sheet.addOther();
    assertTrue(sheet.pair());
    assertEquals(Side.LEFT, sheet.side());
    assertEquals(ear().plan(), sheet.ear().plan());
    sheet.measure(EarMeasure.HEIGHT, 58);
    sheet.endTurn();
    sheet.side(Side.RIGHT);
    assertEquals(ear(), sheet.ear());
    sheet.removeShown();
    assertFalse(sheet.pair());
    assertEquals(58, sheet.ear().ear().height_mm());
    for (int i = 0; i < 4; i++) {
      desk.undo();
    }
    assertFalse(sheet.pair());
    assertEquals(ear(), sheet.ear());
  }

  @Test
  void twoEarsSetOnTheScreenAreInTheFile() throws BadInputException {
    sheet.side(Side.LEFT);
    sheet.addOther();
    Scenario now = desk.document().get().scenario();
    assertEquals(Side.RIGHT, now.ears().get(0).side());
    assertEquals(now, ScenarioReader.shipped().read("pair", ScenarioWriter.text(now)).scenario());
  }

  @Test
  void bothEarsAreShownAtTheSameMoment() throws InterruptedException {
    assertTrue(solving.settle(20_000));
    Rehearsed r = solving.result().get().orElseThrow();
    for (int i = 0; i < r.course().size(); i++) {
      Sides sides = Sides.of(r, r.course().get(i), Optional.of(r), true);
      assertEquals(Optional.of(r.course().get(i)), sides.left(), r.course().get(i).label());
    }
    Rehearsed early =
        new Rehearsed(
            r.ear(),
            Rehearsed.Reach.BEFORE,
            r.map(),
            r.steps().subList(0, 1),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    Sides waiting = Sides.of(r, r.tied(), Optional.of(early), true);
    assertTrue(waiting.left().isEmpty());
    assertTrue(waiting.words().contains("worked out"));
  }
}
