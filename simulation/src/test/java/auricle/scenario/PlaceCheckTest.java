package auricle.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.Auricle;
import auricle.anatomy.MeshLevel;
import auricle.anatomy.ShapeParameters;
import auricle.anatomy.Side;
import auricle.diagnostics.Finding;
import auricle.plan.FoldSuture;
import auricle.plan.Plan;
import auricle.plan.Tie;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlaceCheckTest {
  private static final Auricle EAR = Auricle.of(ShapeParameters.normalAdult(), MeshLevel.PLANNING);

  private static List<Finding> findings(double level, double scapha_mm, double concha_mm) {
    FoldSuture suture =
        FoldSuture.square("s", level, scapha_mm, concha_mm, 12, new Tie.Gap(6), "t");
    return PlaceCheck.findings(EAR, Plan.of(suture));
  }

  @Test
  void bitesOnScaphaAndWallNeedNoWords() {
    assertEquals(List.of(), findings(70, 4, -4));
  }

  @Test
  void bitesOnHelixOrFloorAreTold() {
    List<Finding> helix = findings(70, 20, -4);
    assertEquals(2, helix.size());
    assertTrue(helix.get(0).line().contains("off the scapha, on the helix"), helix::toString);
    assertTrue(findings(65, 4, -24).get(0).line().contains("on its floor"));
  }

  @Test
  void levelsBeyondTheFoldAreTold() {
    List<Finding> low = findings(12, 4, -4);
    assertTrue(low.get(0).line().contains("the fold line reaches"), low::toString);
    assertTrue(low.stream().noneMatch(Finding::isError));
  }

  @Test
  void theyAreToldAtTheirPlacesInTheFile() throws Exception {
    LoadedScenario loaded = ScenarioReader.shipped().read("s.yaml", BadScenarioTest.PAIR);
    Finding told = loaded.locate(Side.LEFT, findings(70, 20, -4)).get(0);
    assertEquals("s.yaml line 4 column 5, plan[0].fold_suture.scapha_from_fold_mm", told.where());
  }
}
