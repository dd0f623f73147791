package auricle.convergence;

import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.analysis.Analysis;
import auricle.analysis.AnalysisWatcher;
import auricle.modelfile.ModelFolder;
import auricle.modelfile.ModelReader;
import auricle.modelfile.ModelSchema;
import auricle.verification.VerificationSuite;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * How fast the error falls with the size of the elements: verification cases of a known exact
 * value, on three meshes each regular, shifted, and unaligned (a Delaunay mesh of shifted points).
 * The rate is the slope of log error over log size.
 */
class ConvergenceTest {
  private static final ModelReader READER = new ModelReader(ModelSchema.load());
  private static final int[] REFINEMENTS = {8, 16, 32};

  /** How a mesh is made irregular, or not. */
  private record Kind(String name, String pattern, double jitter) {}

  private static final List<Kind> KINDS =
      List.of(
          new Kind("regular", "alternating", 0),
          new Kind("shifted", "alternating", 0.25),
          new Kind("unaligned", "unaligned", 0.3));

  /** A case with the rate it must reach at least. */
  private record Problem(String name, double leastRate) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Problem> problems() {
    return Stream.of(
        new Problem("plate_simply_supported_uniform_square", 1.6),
        new Problem("plate_clamped_uniform_square", 1.6),
        new Problem("plate_clamped_point_square", 1.3),
        new Problem("plate_simply_supported_point_square", 1.3));
  }

  @ParameterizedTest
  @MethodSource("problems")
  void theErrorFallsAtTheRateOfAConvergentElement(Problem problem) throws Exception {
    for (Kind kind : KINDS) {
      List<Double> errors = new ArrayList<>();
      SimpleRegression fit = new SimpleRegression();
      for (int n : REFINEMENTS) {
        double error = Math.abs(relativeError(problem.name(), n, kind));
        errors.add(error);
        fit.addData(Math.log(1.0 / n), Math.log(error));
      }
      String words =
          String.format(
              Locale.ROOT,
              "%s, %s: errors %s at %s, rate %.2f",
              problem.name(),
              kind.name(),
              errors.stream().map(e -> String.format(Locale.ROOT, "%.3f %%", 100 * e)).toList(),
              java.util.Arrays.toString(REFINEMENTS),
              fit.getSlope());
      System.err.println(words);
      assertTrue(fit.getSlope() >= problem.leastRate(), words);
    }
  }

  private static double relativeError(String name, int n, Kind kind) throws Exception {
    String text =
        VerificationSuite.text(name + ".yaml")
            .replaceAll(
                "divisions: \\[[^\\]]*\\], pattern: \\w+",
                "divisions: [%d, %d], pattern: %s, jitter: %s, seed: 5"
                    .formatted(n, n, kind.pattern(), kind.jitter()));
    var model = READER.read(name, text, ModelFolder.of(Path.of("."))).model();
    var check = Analysis.run(model, AnalysisWatcher.NONE).checks().get(0);
    return (check.found() - check.expected()) / check.expected();
  }
}
