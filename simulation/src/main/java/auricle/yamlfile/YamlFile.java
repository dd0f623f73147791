package auricle.yamlfile;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;

/** The text of a YAML file, its tree, and the places of its keys. */
public final class YamlFile {
  private static final long LARGEST_BYTES = 16L << 20;

  private final String name;
  private final String text;
  private final Places places;
  private final Entry root;

  private YamlFile(String name, String text, Places places, Entry root) {
    this.name = name;
    this.text = text;
    this.places = places;
    this.root = root;
  }

  /** What else is to be found in a tree before the schema is asked. */
  public interface FirstLook {
    /** Adds what is wrong; places are JSON pointers. The schema says nothing more about these. */
    void look(Entry root, Findings findings);
  }

  /**
   * The text of a file.
   *
   * @param what the kind of file, as in "a model file"
   * @throws BadInputException if it cannot be read
   */
  public static String text(Path file, String what) throws BadInputException {
    try {
      if (Files.size(file) > LARGEST_BYTES) {
        throw unreadable(file, "a file of " + Files.size(file) + " bytes", "at most 16 MB");
      }
      return Files.readString(file);
    } catch (NoSuchFileException e) {
      throw unreadable(file, "no such file", what);
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
   * Reads a text and checks it against a schema.
   *
   * @param name of the file, for messages
   * @throws BadInputException with everything that is wrong
   */
  public static YamlFile read(String name, String text, FileSchema schema)
      throws BadInputException {
    return read(name, text, schema, (root, findings) -> {});
  }

  /** The same with a look at the tree before the schema is asked. */
  public static YamlFile read(String name, String text, FileSchema schema, FirstLook first)
      throws BadInputException {
    Places places = new Places(name);
    Findings findings = new Findings();
    JsonNode tree = YamlTree.read(text, places, findings);
    YamlFile file = new YamlFile(name, text, places, new Entry(tree, ""));
    first.look(file.root, findings);
    Set<String> told = findings.list().stream().map(Finding::where).collect(Collectors.toSet());
    schema.check(tree).stream().filter(f -> !told.contains(f.where())).forEach(findings::add);
    file.stopIfErrors(findings);
    return file;
  }

  /**
   * Ends the reading if something stops the work.
   *
   * @throws BadInputException with every finding so far, at lines and columns
   */
  public void stopIfErrors(Findings findings) throws BadInputException {
    if (findings.hasErrors()) {
      throw new BadInputException(locate(findings.list()));
    }
  }

  /** Findings whose places are pointers into the file, with lines and columns instead. */
  public List<Finding> locate(List<Finding> findings) {
    return findings.stream().map(places::locate).toList();
  }

  /** Name of the file. */
  public String name() {
    return name;
  }

  /** Text of the file, word for word. */
  public String text() {
    return text;
  }

  /** The whole tree. */
  public Entry root() {
    return root;
  }
}
