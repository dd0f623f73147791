package auricle.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import auricle.anatomy.EarMeasurements;
import auricle.anatomy.Side;
import auricle.assessment.CautionKind;
import auricle.plan.Bite;
import auricle.plan.Bolster;
import auricle.plan.BowlStrip;
import auricle.plan.CaudaExcision;
import auricle.plan.ConchaMastoidSuture;
import auricle.plan.EarCase;
import auricle.plan.Face;
import auricle.plan.FoldSuture;
import auricle.plan.FullThicknessIncision;
import auricle.plan.LobuleSuture;
import auricle.plan.Operation;
import auricle.plan.Plan;
import auricle.plan.PressTest;
import auricle.plan.Range;
import auricle.plan.RimShaving;
import auricle.plan.RimWedge;
import auricle.plan.Scoring;
import auricle.plan.SkinStrip;
import auricle.plan.Target;
import auricle.plan.Tie;
import auricle.plan.TissueChoice;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

class ScenarioWriterTest {
  private static final ScenarioReader READER = ScenarioReader.shipped();

  /** One operation of every kind, with doses that are not the usual ones. */
  static List<Operation> everyKind() {
    List<Operation> usual =
        List.of(
            FoldSuture.square(
                "short: form", 71.3, 4.25, -3.5, 13.7, new Tie.Gap(6.5), "polyester_4_0"),
            new FoldSuture(
                "four bites",
                false,
                new Bite(80, 5),
                new Bite(70.1, 4),
                new Bite(78, -3),
                new Bite(66, -4.5),
                new Tie.Tension(0.7),
                "polypropylene_3_0"),
            Scoring.usual("cuts").withFace(Face.ANTERIOR),
            FullThicknessIncision.usual("through"),
            BowlStrip.usual("strip"),
            ConchaMastoidSuture.usual("mastoid", new Tie.Tension(0.35), "polyamide_4_0"),
            LobuleSuture.usual("lobule", new Tie.Gap(7.25), "polydioxanone_5_0"),
            CaudaExcision.usual("cauda"),
            SkinStrip.usual("skin"),
            RimWedge.usual("wedge"),
            RimShaving.usual("12 months"),
            Bolster.usual("true"));
    List<Operation> changed = new ArrayList<>(usual);
    changed.replaceAll(o -> o instanceof FoldSuture ? o : o.withDose(o.doses().get(0).key(), 1.75));
    changed.set(2, changed.get(2).withDose("depth_fraction", 1.0 / 3));
    return changed;
  }

  private static EarCase ear() {
    Target usual = Target.usual();
    return new EarCase(
        EarMeasurements.normalAdult().withSide(Side.LEFT).withHeight_mm(59.7),
        TissueChoice.standard()
            .withOverride("cartilage.modulus_mpa", 2.5)
            .withRow("bite.4_0.tear_through_n", "taper")
            .withPress(new PressTest(80, 8.5, 0.11)),
        new Plan(everyKind()),
        new Target(
            usual.helixMastoid_mm(),
            Range.of(91, 99.5),
            usual.foldAngleMiddle_deg(),
            usual.auriculocephalicAngle_deg(),
            usual.helicalShow_mm(),
            2.5));
  }

  private static Scenario back(Scenario scenario) throws Exception {
    String text = ScenarioWriter.text(scenario);
    try {
      return READER.read("s.yaml", text).scenario();
    } catch (auricle.diagnostics.BadInputException e) {
      throw new AssertionError(e.getMessage() + "\n" + text, e);
    }
  }

  @Test
  void whatIsWrittenReadsBackTheSame() throws Exception {
    Scenario scenario =
        new Scenario(
            "Title: with a colon, # and 'quotes'",
            "Two\nlines",
            List.of(new ScenarioEar(ear(), Expected.NONE)),
            List.of(Moment.of("1 day"), Moment.of("12 months")));
    assertEquals(scenario, back(scenario));
  }

  @Test
  void aPairReadsBackTheSame() throws Exception {
    EarCase left = ear();
    EarCase right =
        left.withEar(EarMeasurements.normalChild())
            .withPlan(left.plan().enable(0, false).withDose(3, "from_fold_mm", -1.5));
    Expected expected =
        new Expected(
            false,
            List.of(CautionKind.SKIN_ALONE),
            List.of(CautionKind.SHARP_FOLD, CautionKind.SIDES_DIFFER),
            List.of());
    Scenario scenario =
        new Scenario(
            "",
            "",
            List.of(new ScenarioEar(right, Expected.NONE), new ScenarioEar(left, expected)),
            List.of());
    assertEquals(scenario, back(scenario));
  }

  @Test
  void expectationsReadBackTheSame() throws Exception {
    Scenario scenario = READER.read("s.yaml", BadScenarioTest.GOOD).scenario();
    assertEquals(scenario, back(scenario));
  }

  @Test
  void randomPlansReadBackToTheLastDigit() throws Exception {
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(7);
    for (int i = 0; i < 200; i++) {
      List<Operation> steps = new ArrayList<>();
      for (Operation operation : everyKind()) {
        Operation changed = operation;
        for (auricle.plan.Dose dose : operation.doses()) {
          double value = dose.low() + random.nextDouble() * (dose.high() - dose.low());
          Operation other = changed.withDose(dose.key(), value);
          changed = other.findings("").stream().anyMatch(f -> f.isError()) ? changed : other;
        }
        steps.add(changed);
      }
      Scenario scenario = Scenario.of("random", ear().withPlan(new Plan(steps)));
      assertEquals(scenario, back(scenario));
    }
  }
}
