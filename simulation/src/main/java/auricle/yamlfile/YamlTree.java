package auricle.yamlfile;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * A YAML text as a tree, with the place of every key. Refused here, each with its own line: keys
 * that stand twice, aliases, numbers that are not finite, several documents in one file.
 */
final class YamlTree {
  private static final Pattern MARK =
      Pattern.compile("\\s+in reader, line (\\d+), column (\\d+):.*");
  private static final Pattern INNER = Pattern.compile("\\(java[^)]*\\) ");
  private static final int DEEPEST = 60;
  private static final double LARGEST_EXACT = 1e15;

  private final Places places;
  private final Findings findings;
  private final YAMLParser parser;

  private YamlTree(YAMLParser parser, Places places, Findings findings) {
    this.parser = parser;
    this.places = places;
    this.findings = findings;
  }

  /**
   * Reads a text.
   *
   * @param places filled with the place of every key and item
   * @param findings filled with what is wrong
   * @throws BadInputException if it is not YAML at all, or empty
   */
  static JsonNode read(String text, Places places, Findings findings) throws BadInputException {
    try (JsonParser parser =
        YAMLFactory.builder().build().createParser(ObjectReadContext.empty(), text)) {
      JsonToken first = parser.nextToken();
      if (first == null) {
        throw new BadInputException(
            Finding.error(places.at(1, 1), "nothing in the file", "keys and values", ""));
      }
      YamlTree tree = new YamlTree((YAMLParser) parser, places, findings);
      JsonNode root = tree.value(first, 0);
      if (parser.nextToken() != null) {
        tree.error("a second document", "one document in a file", "Remove the line '---'.");
      }
      return root;
    } catch (JacksonException e) {
      throw new BadInputException(syntax(e, places));
    }
  }

  private JsonNode value(JsonToken token, int depth) throws BadInputException {
    note();
    if (parser.isCurrentAlias()) {
      findings.error(pointer(), "an alias", "the value itself", "Write it out where it is used.");
      return JsonNodeFactory.instance.nullNode();
    }
    if (depth > DEEPEST) {
      error("lists or keys nested over " + DEEPEST + " deep", "a flatter file", "");
      throw new BadInputException(findings.list());
    }
    return switch (token) {
      case START_OBJECT -> object(depth);
      case START_ARRAY -> array(depth);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number();
      case VALUE_TRUE -> JsonNodeFactory.instance.booleanNode(true);
      case VALUE_FALSE -> JsonNodeFactory.instance.booleanNode(false);
      case VALUE_NULL -> JsonNodeFactory.instance.nullNode();
      default -> JsonNodeFactory.instance.stringNode(parser.getString());
    };
  }

  private ObjectNode object(int depth) throws BadInputException {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      String key = parser.currentName();
      note();
      if (node.has(key)) {
        error("'" + key + "' a second time", "every key once", "Remove one of the two.");
      }
      JsonToken token = parser.nextToken();
      if (token != null) {
        node.set(key, value(token, depth + 1));
      }
    }
    return node;
  }

  private ArrayNode array(int depth) throws BadInputException {
    ArrayNode node = JsonNodeFactory.instance.arrayNode();
    for (JsonToken token = parser.nextToken();
        token != null && token != JsonToken.END_ARRAY;
        token = parser.nextToken()) {
      node.add(value(token, depth + 1));
    }
    return node;
  }

  private JsonNode number() {
    double value = parser.getDoubleValue();
    if (!Double.isFinite(value)) {
      findings.error(pointer(), "'" + parser.getString() + "'", "a finite number", "");
      return JsonNodeFactory.instance.numberNode(1);
    }
    if (value != Math.rint(value)) {
      return JsonNodeFactory.instance.numberNode(value);
    }
    // whole numbers in a form that the schema's bounds can be compared with, however large
    return Math.abs(value) < LARGEST_EXACT
        ? JsonNodeFactory.instance.numberNode((long) value)
        : JsonNodeFactory.instance.numberNode(BigDecimal.valueOf(value).toBigInteger());
  }

  private void note() {
    TokenStreamLocation at = parser.currentTokenLocation();
    places.note(pointer(), at.getLineNr(), at.getColumnNr());
  }

  private void error(String found, String expected, String remedy) {
    TokenStreamLocation at = parser.currentTokenLocation();
    String path = Places.path(pointer());
    String where = places.at(at.getLineNr(), at.getColumnNr());
    findings.error(path.isEmpty() ? where : where + ", " + path, found, expected, remedy);
  }

  private String pointer() {
    return parser.streamReadContext().pathAsPointer().toString();
  }

  private static Finding syntax(JacksonException e, Places places) {
    return Finding.error(
        place(e, places),
        "text that is not YAML: " + problem(e.getOriginalMessage()),
        "YAML",
        "Look for a missing bracket, quote or colon, a tab, or a number like .nan.");
  }

  /** The last place that the parser's words name, else the place of the token before. */
  private static String place(JacksonException e, Places places) {
    @Nullable TokenStreamLocation at = e.getLocation();
    String where = at == null ? places.at(1, 1) : places.at(at.getLineNr(), at.getColumnNr());
    for (String line : e.getOriginalMessage().lines().toList()) {
      Matcher mark = MARK.matcher(line);
      if (mark.matches()) {
        where = places.at(Integer.parseInt(mark.group(1)), Integer.parseInt(mark.group(2)));
      }
    }
    return where;
  }

  /** The parser's own words without its sketch of the line. */
  private static String problem(String message) {
    StringBuilder words = new StringBuilder();
    for (String line : message.lines().toList()) {
      Matcher mark = MARK.matcher(line);
      boolean sketch = line.startsWith("    ") || mark.matches() || line.startsWith(" in reader");
      if (!sketch && !line.isBlank()) {
        words.append(words.isEmpty() ? "" : ", ").append(line.strip());
      }
    }
    return INNER.matcher(words).replaceAll("");
  }
}
