package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.EarMeasurements;
import auricle.diagnostics.BadInputException;
import auricle.material.MaterialTables;
import auricle.measurement.Figure;
import auricle.plan.EarCase;
import auricle.plan.FoldSuture;
import auricle.plan.Plan;
import auricle.plan.Target;
import auricle.plan.Tie;
import auricle.plan.TissueChoice;
import auricle.testing.Check;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Rates from the stiffness at rest are those that whole rehearsals give by differences. */
class ReactionsTest {
  private static final double STEP_MM = 0.02;

  private static EarCase ear(double gap_mm) {
    Plan plan =
        Plan.of(FoldSuture.square("fold", 68, 7, -6, 8, new Tie.Gap(gap_mm), "polyester_4_0"));
    EarMeasurements open =
        EarMeasurements.normalAdult()
            .withHelixMastoidUpper_mm(19)
            .withHelixMastoidMiddle_mm(20)
            .withHelixMastoidLower_mm(19)
            .withAuriculocephalicAngle_deg(36)
            .withFoldAngleUpper_deg(132)
            .withFoldAngleMiddle_deg(128);
    return new EarCase(open, TissueChoice.standard(), plan, Target.usual());
  }

  @Test
  void theRateByAGapIsThatOfWholeRehearsals() throws BadInputException {
    LiveEar live =
        LiveEar.of(
            ear(9), RehearsalSettings.tied(), MaterialTables.shipped(), RehearsalWatcher.SILENT);
    Reaction reaction =
        live.reactions(RehearsalWatcher.SILENT).stream()
            .filter(r -> r.dose().equals("gap_mm"))
            .findFirst()
            .orElseThrow();
    double more = upper(live.rerun(ear(9 + STEP_MM), RehearsalWatcher.SILENT));
    double less = upper(live.rerun(ear(9 - STEP_MM), RehearsalWatcher.SILENT));
    Check.within(
        0.05,
        reaction.rates().getOrDefault(Figure.HELIX_MASTOID_UPPER, Double.NaN),
        (more - less) / (2 * STEP_MM),
        "central difference of whole rehearsals, own value");
  }

  /** A loop that is just straight pulls if it is tied closer, and does nothing if it is let out. */
  @Test
  void aThreadAboutToGoSlackHasNoRateAndSaysSo() throws BadInputException {
    LiveEar live =
        LiveEar.of(
            ear(20), RehearsalSettings.tied(), MaterialTables.shipped(), RehearsalWatcher.SILENT);
    List<Position> p = live.result().after().threads().get(0).points();
    double straight = (distance(p.get(1), p.get(2)) + distance(p.get(3), p.get(0))) / 2;
    live.rerun(ear(straight), RehearsalWatcher.SILENT);
    Reaction atTheCorner = gap(live);
    assertFalse(atTheCorner.without().isEmpty());
    assertTrue(atTheCorner.rates().isEmpty());
    live.rerun(ear(straight + 0.5), RehearsalWatcher.SILENT);
    assertEquals(0, gap(live).rates().getOrDefault(Figure.HELIX_MASTOID_UPPER, Double.NaN), 1e-6);
  }

  /** Bites of a slack suture move nothing, wherever they are. */
  @Test
  void dosesOfASlackSutureDoNothing() throws BadInputException {
    LiveEar live =
        LiveEar.of(
            ear(20), RehearsalSettings.tied(), MaterialTables.shipped(), RehearsalWatcher.SILENT);
    for (Reaction reaction : live.reactions(RehearsalWatcher.SILENT)) {
      double rate = reaction.rates().getOrDefault(Figure.FOLD_ANGLE_UPPER, Double.NaN);
      assertEquals(0, rate, 1e-6, reaction.dose());
    }
  }

  private static Reaction gap(LiveEar live) throws BadInputException {
    return live.reactions(RehearsalWatcher.SILENT).stream()
        .filter(r -> r.dose().equals("gap_mm"))
        .findFirst()
        .orElseThrow();
  }

  private static double distance(Position a, Position b) {
    return new Vector3D(a.lateral_mm(), a.anterior_mm(), a.superior_mm())
        .distance(new Vector3D(b.lateral_mm(), b.anterior_mm(), b.superior_mm()));
  }

  private static double upper(RehearsalResult result) {
    return result.after().measures().helixMastoidUpper_mm();
  }
}
