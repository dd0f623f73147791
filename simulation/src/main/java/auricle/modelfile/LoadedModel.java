package auricle.modelfile;

import auricle.analysis.Model;
import auricle.diagnostics.Finding;
import auricle.yamlfile.YamlFile;
import java.util.List;

/** A model with the file it came from, so that later findings can name line and column. */
public final class LoadedModel {
  private final Model model;
  private final YamlFile file;

  LoadedModel(Model model, YamlFile file) {
    this.model = model;
    this.file = file;
  }

  /** The model. */
  public Model model() {
    return model;
  }

  /** Name of the file. */
  public String name() {
    return file.name();
  }

  /** Text of the file, word for word. */
  public String text() {
    return file.text();
  }

  /** Findings whose places are pointers into the model, with lines and columns instead. */
  public List<Finding> locate(List<Finding> findings) {
    return file.locate(findings);
  }
}
