package auricle.modelfile;

import auricle.analysis.Expectation;
import auricle.analysis.MeshSource;
import auricle.analysis.Model;
import auricle.analysis.SectionChoice;
import auricle.analysis.Selector;
import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;

/**
 * Reads model files. The schema is checked first; what passes it is read into a {@link Model}, with
 * everything the schema cannot say found on the way. All findings are told at once.
 */
public final class ModelReader {
  private static final long LARGEST_BYTES = 16L << 20;

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
    String name = String.valueOf(file.getFileName());
    try {
      if (Files.size(file) > LARGEST_BYTES) {
        throw unreadable(file, "a file of " + Files.size(file) + " bytes", "at most 16 MB");
      }
      Path folder = file.toAbsolutePath().getParent();
      return read(name, Files.readString(file), ModelFolder.of(folder == null ? file : folder));
    } catch (NoSuchFileException e) {
      throw unreadable(file, "no such file", "a model file");
    } catch (CharacterCodingException e) {
      throw unreadable(file, "bytes that are not UTF-8", "a text file in UTF-8");
    } catch (IOException e) {
      throw unreadable(file, "the file cannot be read", "a readable file");
    }
  }

  private static BadInputException unreadable(Path file, String found, String expected) {
    return new BadInputException(Finding.error(file.toString(), found, expected, ""));
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
    Places places = new Places(name);
    Findings findings = new Findings();
    JsonNode tree = YamlTree.read(text, places, findings);
    Set<String> told = findings.list().stream().map(Finding::where).collect(Collectors.toSet());
    schema.check(tree).stream().filter(f -> !told.contains(f.where())).forEach(findings::add);
    stopIfErrors(findings, places);
    Model model = model(new Entry(tree, ""), folder, findings);
    stopIfErrors(findings, places);
    return new LoadedModel(model, name, text, places);
  }

  private static void stopIfErrors(Findings findings, Places places) throws BadInputException {
    if (findings.hasErrors()) {
      throw new BadInputException(findings.list().stream().map(places::locate).toList());
    }
  }

  private static Model model(Entry root, ModelFolder folder, Findings findings) {
    Tables tables = new Tables(folder, findings);
    Entry start = root.get("start");
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
        root.items("supports").stream().map(SupportEntries::support).toList(),
        root.items("loads").stream().map(LoadEntries::load).toList(),
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
