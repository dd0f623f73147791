package auricle.modelfile;

import auricle.analysis.Analysis;
import auricle.analysis.AnalysisResult;
import auricle.analysis.AnalysisWatcher;
import auricle.analysis.Probe;
import auricle.diagnostics.BadInputException;
import java.nio.file.Path;
import java.util.List;

/** Runs model texts, for tests. */
public final class SmallModels {
  private static final ModelReader READER = new ModelReader(ModelSchema.load());

  private SmallModels() {}

  /** A strip of length 10, width 1, thickness 0.1, E = 1.2e6 (EI = 100, EA = 1.2e5), ν = 0. */
  public static String strip(String rest) {
    return """
        format: auricle-model/1
        title: strip
        mesh: {strip: {length_mm: 10, width_mm: 1, divisions: [10, 1]}}
        section: {thickness_mm: 0.1, young_mpa: 1.2e6, poisson: 0}
        """
        + rest;
  }

  /** Reads and runs a model; findings name lines. */
  public static AnalysisResult run(String text) throws BadInputException {
    LoadedModel loaded = read(text);
    try {
      return Analysis.run(loaded.model(), AnalysisWatcher.NONE);
    } catch (BadInputException e) {
      throw new BadInputException(loaded.locate(e.findings()));
    }
  }

  /** Reads a model. */
  public static LoadedModel read(String text) throws BadInputException {
    return READER.read("m.yaml", text, ModelFolder.of(Path.of(".")));
  }

  /** Value of a probe at the last step. */
  public static double last(String text, String probe) throws BadInputException {
    AnalysisResult result = run(text);
    List<Probe> probes = read(text).model().probes();
    for (int i = 0; i < probes.size(); i++) {
      if (probes.get(i).name().equals(probe)) {
        return result.steps().get(result.steps().size() - 1).probes().get(i);
      }
    }
    throw new IllegalArgumentException("no probe " + probe);
  }
}
