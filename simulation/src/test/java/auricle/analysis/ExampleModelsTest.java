package auricle.analysis;

import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.modelfile.LoadedModel;
import auricle.modelfile.ModelFolder;
import auricle.modelfile.ModelReader;
import auricle.modelfile.ModelSchema;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The example models that are shipped come to rest and meet what they say they expect, if anything.
 */
class ExampleModelsTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "cylinder_with_free_ends",
        "hook_of_two_arcs",
        "sphere_under_pressure",
        "twisted_beam"
      })
  void meetsItsExpectations(String name) throws Exception {
    ModelFolder folder = ModelFolder.ofResources("/auricle/models/");
    LoadedModel loaded =
        new ModelReader(ModelSchema.load())
            .read(name + ".yaml", folder.text(name + ".yaml"), folder);
    AnalysisResult result = Analysis.run(loaded.model(), AnalysisWatcher.NONE);
    assertTrue(result.converged(), result.outcome());
    assertTrue(result.expectationsMet(), () -> result.checks().toString());
  }
}
