package auricle.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.modelfile.ModelFolder;
import auricle.modelfile.ModelReader;
import auricle.modelfile.ModelSchema;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A strip bent by 80 deg on too few and on enough elements. */
class TurnAlongEdgesTest {
  private static List<String> remarks(int cells) throws Exception {
    String text =
        """
        format: auricle-model/1
        mesh:
          strip: {length_mm: 12, width_mm: 6, divisions: [%d, 1]}
        section: {thickness_mm: 0.1, young_mpa: 1.2e6, poisson: 0}
        supports:
          - clamp: {where: start}
          - turn: {where: end, axis: -y, angle_deg: 80}
        solve:
          load_steps: {count: 2}
        probes:
          turn: {rotation: {where: end, axis: -y}}
        """
            .formatted(cells);
    ModelReader reader = new ModelReader(ModelSchema.load());
    Model model = reader.read("m.yaml", text, ModelFolder.of(Path.of("."))).model();
    AnalysisResult result = Analysis.run(model, AnalysisWatcher.NONE);
    assertTrue(result.converged(), result.outcome());
    return result.remarks();
  }

  @Test
  void aMeshThatIsTooCoarseIsTold() throws Exception {
    List<String> remarks = remarks(1);
    assertEquals(1, remarks.size(), remarks::toString);
    assertTrue(remarks.get(0).contains("too coarse"), remarks::toString);
  }

  @Test
  void aMeshThatIsFineEnoughIsNotSpokenOf() throws Exception {
    assertEquals(List.of(), remarks(6));
  }
}
