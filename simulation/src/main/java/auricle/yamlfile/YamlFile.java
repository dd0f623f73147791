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
  private final String name;
  private final String text;
  private final Places places;
  private final Entry root;
  private final List<Finding> findings;

  private YamlFile(String name, String text, Places places, Entry root, List<Finding> findings) {
    this.name = name;
    this.text = text;
    this.places = places;
    this.root = root;
    this.findings = List.copyOf(findings);
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
   * @param largestMegabytes size above which it is refused, MB
   * @throws BadInputException if it cannot be read
   */
  public static String text(Path file, String what, int largestMegabytes) throws BadInputException {
    try {
      if (Files.size(file) > (long) largestMegabytes << 20) {
        String most = "at most " + largestMegabytes + " MB";
        throw unreadable(file, "a file of " + Files.size(file) + " bytes", most);
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
    YamlFile file = open(name, text, schema, (root, findings) -> {});
    if (file.findings.stream().anyMatch(Finding::isError)) {
      throw new BadInputException(file.locate(file.findings));
    }
    return file;
  }

  /**
   * Reads a text and checks it against a schema; what the schema objects to is left out of the
   * tree, so that the rest can be read and everything told at once.
   *
   * @param first looks at the tree before the schema is asked
   * @throws BadInputException if it is not YAML with keys
   */
  public static YamlFile open(String name, String text, FileSchema schema, FirstLook first)
      throws BadInputException {
    Places places = new Places(name);
    Findings findings = new Findings();
    JsonNode tree = YamlTree.read(text, places, findings);
    first.look(new Entry(tree, ""), findings);
    Set<String> told = findings.list().stream().map(Finding::where).collect(Collectors.toSet());
    schema.check(tree).stream().filter(f -> !told.contains(f.where())).forEach(findings::add);
    findings.list().forEach(f -> Pruning.leaveOut(tree, f.where()));
    return new YamlFile(name, text, places, new Entry(tree, ""), findings.list());
  }

  /** What first look and schema object to; places are JSON pointers, or lines and columns. */
  public List<Finding> findings() {
    return findings;
  }

  /**
   * Ends the reading if something stops the work.
   *
   * @throws BadInputException with every finding so far, at lines and columns
   */
  public void stopIfErrors(Findings found) throws BadInputException {
    if (found.hasErrors()) {
      throw new BadInputException(locate(found.list()));
    }
  }

  /** Findings whose places are pointers into the file, with lines and columns instead. */
  public List<Finding> locate(List<Finding> found) {
    return found.stream().map(places::locate).toList();
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
