package auricle.yamlfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * A node of a file that the schema has already accepted, and its JSON pointer. What is asked for
 * without a default must be there by the schema.
 *
 * @param node the node
 * @param at its JSON pointer
 */
public record Entry(JsonNode node, String at) {
  /** Whether there is such a key. */
  public boolean has(String key) {
    return node.has(key);
  }

  /** What stands under a key; an entry that is missing if there is none. */
  public Entry get(String key) {
    return new Entry(node.path(key), at + "/" + key);
  }

  /** What stands under a key, if it is there. */
  public Optional<Entry> find(String key) {
    return has(key) ? Optional.of(get(key)) : Optional.empty();
  }

  /** The number under a key. */
  public double number(String key) {
    return node.path(key).asDouble();
  }

  /** The number under a key, or another if it is not there. */
  public double number(String key, double otherwise) {
    return has(key) ? number(key) : otherwise;
  }

  /** The whole number under a key, or another if it is not there. */
  public int integer(String key, int otherwise) {
    return has(key) ? node.path(key).asInt() : otherwise;
  }

  /** Whether true stands under a key; false if nothing does. */
  public boolean flag(String key) {
    return node.path(key).asBoolean(false);
  }

  /** The text under a key, or another if it is not there. */
  public String text(String key, String otherwise) {
    return has(key) ? node.path(key).asString() : otherwise;
  }

  /** The text under a key; empty if it is not there. */
  public String text(String key) {
    return node.path(key).asString();
  }

  /** The text of the node itself. */
  public String string() {
    return node.asString();
  }

  /** The items of a list; none of anything else. */
  public List<Entry> items() {
    List<Entry> items = new ArrayList<>();
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      items.add(new Entry(node.path(i), at + "/" + i));
    }
    return items;
  }

  /** The items of a list under a key; none if it is not there. */
  public List<Entry> items(String key) {
    return get(key).items();
  }

  /** The numbers of a list under a key. */
  public List<Double> numbers(String key) {
    return items(key).stream().map(e -> e.node().asDouble()).toList();
  }

  /** All keys, in order. */
  public List<String> keys() {
    return List.copyOf(node.propertyNames());
  }

  /** The one key of a node that has only one. */
  public String onlyKey() {
    return keys().get(0);
  }

  /** What stands under the one key. */
  public Entry only() {
    return get(onlyKey());
  }
}
