package auricle.yamlfile;

import auricle.diagnostics.Finding;
import auricle.diagnostics.NearestName;
import com.networknt.schema.Error;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;

/** One objection of the schema in words: what was found, expected, and what to do. */
final class SchemaWords {
  private final JsonNode schema;
  private final Error error;
  private final String pointer;

  SchemaWords(JsonNode schema, Error error) {
    this.schema = schema;
    this.error = error;
    this.pointer = error.getInstanceLocation().toString();
  }

  Finding finding() {
    return switch (error.getKeyword()) {
      case "additionalProperties" -> unknownKey();
      case "required" -> missingKey();
      case "type" -> say(found(), kinds(), unitRemedy());
      case "enum" -> say(found(), "one of " + values(), nearestValue());
      case "const" -> say(found(), rule().asString(), "");
      case "minimum" -> say(found(), "at least " + rule(), "");
      case "exclusiveMinimum" -> say(found(), "more than " + rule(), "");
      case "maximum" -> say(found(), "at most " + rule(), "");
      case "exclusiveMaximum" -> say(found(), "less than " + rule(), "");
      case "minItems" -> say(size() + " items", "at least " + rule(), describe());
      case "maxItems" -> say(size() + " items", "at most " + rule(), describe());
      case "minProperties" -> say(keys(), "at least " + rule() + " of " + known(), "");
      case "maxProperties" -> say(keys(), "no more than " + rule() + " key here", "");
      case "minLength" -> say("an empty text", "a text", "");
      case "propertyNames" -> badName();
      case "pattern" -> say(found(), described(), "");
      default -> say(found(), error.getMessage(), "");
    };
  }

  private Finding say(String found, String expected, String remedy) {
    return Finding.error(pointer, found, expected, remedy);
  }

  private Finding unknownKey() {
    String key = property();
    List<String> known = properties();
    String expected = known.isEmpty() ? "no key here" : "a known key";
    return Finding.error(
        child(key), "unknown key '" + key + "'", expected, NearestName.hint(key, known));
  }

  private Finding missingKey() {
    String key = property();
    JsonNode child = parent().path("properties").path(key);
    String meaning = child.path("description").asString("");
    String named = "'" + key + "'";
    return say(named + " is missing", meaning.isEmpty() ? named : meaning, "Add " + named + ".");
  }

  /** A number with its unit behind it, or without a leading digit, is the likeliest slip. */
  private String unitRemedy() {
    String text = instance().isString() ? instance().asString() : "";
    if (!kinds().contains("number")) {
      return describe();
    }
    if (text.matches("[-+]?\\.[0-9].*|\\+[0-9].*")) {
      return "Write it with a digit first, such as 0.5.";
    }
    return text.matches("[-+]?[0-9.]+([eE][-+]?[0-9]+)?\\s*\\S+.*")
        ? "Write the number alone; the key says its unit."
        : describe();
  }

  private String found() {
    JsonNode node = instance();
    if (node.isObject() || node.isArray()) {
      return node.isObject() ? "keys " + keys() : "a list of " + size();
    }
    return node.isNull() ? "nothing" : "'" + node.asString() + "'";
  }

  private String keys() {
    List<String> names = new ArrayList<>(instance().propertyNames());
    return names.isEmpty() ? "no key" : String.join(", ", names);
  }

  private String kinds() {
    List<String> names = new ArrayList<>();
    (rule().isArray() ? rule() : List.of(rule())).forEach(n -> names.add(kind(n.asString())));
    return String.join(" or ", names);
  }

  private static String kind(String type) {
    return switch (type) {
      case "object" -> "keys below it";
      case "array" -> "a list";
      case "string" -> "a text";
      case "boolean" -> "true or false";
      case "integer" -> "a whole number";
      default -> "a number";
    };
  }

  private Finding badName() {
    String name = property();
    String expected = "a letter, then letters, digits or _";
    return Finding.error(child(name), "the name '" + name + "'", expected, "");
  }

  private String child(String key) {
    return pointer + "/" + key.replace("~", "~0").replace("/", "~1");
  }

  private String values() {
    List<String> values = new ArrayList<>();
    rule().forEach(v -> values.add(v.asString()));
    return String.join(", ", values);
  }

  private String nearestValue() {
    return NearestName.of(instance().asString(""), List.of(values().split(", ")))
        .map(v -> "Did you mean '" + v + "'?")
        .orElse("");
  }

  private String known() {
    return String.join(", ", properties());
  }

  private List<String> properties() {
    return List.copyOf(parent().path("properties").propertyNames());
  }

  private String describe() {
    return parent().path("description").asString("");
  }

  /** The description as the end of a sentence. */
  private String described() {
    String text = describe();
    return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
  }

  private String size() {
    return Integer.toString(instance().size());
  }

  private String property() {
    @Nullable String property = error.getProperty();
    return property == null ? "" : property;
  }

  private JsonNode instance() {
    @Nullable JsonNode node = error.getInstanceNode();
    return node == null ? tools.jackson.databind.node.NullNode.getInstance() : node;
  }

  /** The value of the keyword that objects. */
  private JsonNode rule() {
    return schema.at(JsonPointer.compile(fragment()));
  }

  /** The schema that holds the keyword. */
  private JsonNode parent() {
    String fragment = fragment();
    return schema.at(JsonPointer.compile(fragment.substring(0, fragment.lastIndexOf('/'))));
  }

  private String fragment() {
    String location = error.getSchemaLocation().toString();
    return location.substring(location.indexOf('#') + 1);
  }
}
