package auricle.modelfile;

import auricle.analysis.Model;
import auricle.diagnostics.Finding;
import java.util.List;

/** A model with the file it came from, so that later findings can name line and column. */
public final class LoadedModel {
  private final Model model;
  private final String name;
  private final String text;
  private final Places places;

  LoadedModel(Model model, String name, String text, Places places) {
    this.model = model;
    this.name = name;
    this.text = text;
    this.places = places;
  }

  /** The model. */
  public Model model() {
    return model;
  }

  /** Name of the file. */
  public String name() {
    return name;
  }

  /** Text of the file, word for word. */
  public String text() {
    return text;
  }

  /** Findings whose places are pointers into the model, with lines and columns instead. */
  public List<Finding> locate(List<Finding> findings) {
    return findings.stream().map(places::locate).toList();
  }
}
