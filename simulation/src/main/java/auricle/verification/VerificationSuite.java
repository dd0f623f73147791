package auricle.verification;

import auricle.analysis.Analysis;
import auricle.analysis.AnalysisResult;
import auricle.analysis.AnalysisWatcher;
import auricle.diagnostics.BadInputException;
import auricle.modelfile.LoadedModel;
import auricle.modelfile.ModelFolder;
import auricle.modelfile.ModelReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The benchmark set: model files among the program's resources, each with the values it should give
 * and where these come from. The same files can be given to {@code auricle analyse}.
 */
public final class VerificationSuite {
  private static final String FOLDER = "/auricle/verification/";

  private final ModelReader reader;

  /**
   * @param reader reads the model files
   */
  public VerificationSuite(ModelReader reader) {
    this.reader = reader;
  }

  /** Names of all cases, in the order of the list {@code cases.txt}. */
  public static List<String> names() {
    return text("cases.txt").lines().filter(l -> !l.isBlank() && !l.startsWith("#")).toList();
  }

  /** The model file of a case. */
  public static String text(String name) {
    try (InputStream in = VerificationSuite.class.getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new IllegalArgumentException("no verification case " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Runs one case.
   *
   * @param watcher may cancel it
   * @throws IllegalStateException if the case itself is not a valid model, which is an error of the
   *     program
   */
  public CaseResult run(String name, AnalysisWatcher watcher) {
    String file = name + ".yaml";
    long start = System.nanoTime();
    try {
      LoadedModel loaded = reader.read(file, text(file), ModelFolder.ofResources(FOLDER));
      AnalysisResult result = Analysis.run(loaded.model(), watcher);
      return CaseResult.of(name, loaded.model().title(), result, System.nanoTime() - start);
    } catch (BadInputException e) {
      throw new IllegalStateException("verification case " + file + ": " + e.findings(), e);
    }
  }
}
