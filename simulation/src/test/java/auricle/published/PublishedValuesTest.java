package auricle.published;

import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.analysis.AnalysisWatcher;
import auricle.modelfile.ModelReader;
import auricle.modelfile.ModelSchema;
import auricle.verification.CaseResult;
import auricle.verification.VerificationSuite;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every case of the verify command, with the source and tolerance that its model file states. */
class PublishedValuesTest {
  private static final VerificationSuite SUITE =
      new VerificationSuite(new ModelReader(ModelSchema.load()));

  static List<String> cases() {
    return VerificationSuite.names();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyExpectedValueIsMet(String name) {
    CaseResult result = SUITE.run(name, AnalysisWatcher.NONE);
    assertTrue(result.converged(), result.outcome());
    assertTrue(!result.rows().isEmpty(), "nothing is checked");
    for (CaseResult.Row row : result.rows()) {
      assertTrue(row.met(), () -> row + "");
    }
  }
}
