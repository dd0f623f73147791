package auricle.modelfile;

import auricle.analysis.Expectation;
import auricle.analysis.MeshSource;
import auricle.analysis.Model;
import auricle.analysis.SectionChoice;
import auricle.analysis.Selector;
import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Findings;
import auricle.yamlfile.Entry;
import auricle.yamlfile.YamlFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads model files. The schema is checked first; what passes it is read into a {@link Model}, with
 * everything the schema cannot say found on the way. All findings are told at once.
 */
public final class ModelReader {
  private static final int LARGEST_MB = 16;

  private final ModelSchema schema;

  /**
   * @param schema the schema to check against
   */
  public ModelReader(ModelSchema schema) {
    this.schema = schema;
  }

  /**
   * Reads a file.
   *
   * @throws BadInputException if it cannot be read or used
   */
  public LoadedModel read(Path file) throws BadInputException {
    Path folder = file.toAbsolutePath().getParent();
    return read(
        String.valueOf(file.getFileName()),
        YamlFile.text(file, "a model file", LARGEST_MB),
        ModelFolder.of(folder == null ? file : folder));
  }

  /**
   * Reads a text.
   *
   * @param name of the file, for messages
   * @param text the model
   * @param folder where files that it names are looked for
   * @throws BadInputException if it cannot be used
   */
  public LoadedModel read(String name, String text, ModelFolder folder) throws BadInputException {
    YamlFile file = YamlFile.read(name, text, schema.schema());
    Findings findings = new Findings();
    Model model = model(file.root(), folder, findings);
    file.stopIfErrors(findings);
    return new LoadedModel(model, file);
  }

  private static Model model(Entry root, ModelFolder folder, Findings findings) {
    Tables tables = new Tables(folder, findings);
    Entry start = root.get("start");
    SupportEntries supports = new SupportEntries(findings);
    LoadEntries loads = new LoadEntries(folder, findings);
    ExpectationEntries expected = new ExpectationEntries(tables, findings);
    List<Expectation> expectations =
        root.items("expected").stream().map(expected::expectation).toList();
    return new Model(
        root.text("title"),
        mesh(root.get("mesh"), folder),
        SelectorEntries.sets(root.get("sets")),
        sections(root, new SectionEntries(findings)),
        root.find("rest_shape").map(e -> mesh(e, folder)),
        root.items("rest_changes").stream().map(SectionEntries::restChange).toList(),
        new Model.Start(start.number("disturbance_mm", 0), start.integer("seed", 1)),
        root.items("supports").stream().map(supports::support).toList(),
        root.items("loads").stream().map(loads::load).toList(),
        new SolveEntries(tables, findings).plan(root.get("solve")),
        ProbeEntries.probes(root.get("probes")),
        expectations);
  }

  private static MeshSource mesh(Entry e, ModelFolder folder) {
    return MeshEntries.source(e, folder::path);
  }

  private static List<SectionChoice> sections(Entry root, SectionEntries entries) {
    List<SectionChoice> sections = new ArrayList<>();
    sections.add(entries.section(root.get("section"), new Selector.Everything("/section")));
    root.items("other_sections")
        .forEach(e -> sections.add(entries.section(e, SelectorEntries.where(e))));
    return sections;
  }
}
