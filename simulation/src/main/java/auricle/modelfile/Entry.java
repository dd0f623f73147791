package auricle.modelfile;

import auricle.analysis.Triple;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * A node of a model file that the schema has already accepted, and its JSON pointer. What is asked
 * for without a default must be there by the schema.
 *
 * @param node the node
 * @param at its JSON pointer
 */
record Entry(JsonNode node, String at) {
  boolean has(String key) {
    return node.has(key);
  }

  Entry get(String key) {
    return new Entry(node.path(key), at + "/" + key);
  }

  Optional<Entry> find(String key) {
    return has(key) ? Optional.of(get(key)) : Optional.empty();
  }

  double number(String key) {
    return node.path(key).asDouble();
  }

  double number(String key, double otherwise) {
    return has(key) ? number(key) : otherwise;
  }

  int integer(String key, int otherwise) {
    return has(key) ? node.path(key).asInt() : otherwise;
  }

  boolean flag(String key) {
    return node.path(key).asBoolean(false);
  }

  String text(String key, String otherwise) {
    return has(key) ? node.path(key).asString() : otherwise;
  }

  String text(String key) {
    return node.path(key).asString();
  }

  /** Three numbers. */
  Triple triple() {
    return new Triple(node.path(0).asDouble(), node.path(1).asDouble(), node.path(2).asDouble());
  }

  /** Three numbers, or x, y, z with a sign. */
  Triple direction() {
    if (!node.isString()) {
      return triple();
    }
    String name = node.asString();
    double sign = name.startsWith("-") ? -1 : 1;
    char axis = name.charAt(name.length() - 1);
    return new Triple(axis == 'x' ? sign : 0, axis == 'y' ? sign : 0, axis == 'z' ? sign : 0);
  }

  /** The items of a list. */
  List<Entry> items() {
    List<Entry> items = new ArrayList<>();
    for (int i = 0; i < node.size(); i++) {
      items.add(new Entry(node.path(i), at + "/" + i));
    }
    return items;
  }

  /** The items of a list under a key; none if it is not there. */
  List<Entry> items(String key) {
    return get(key).items();
  }

  /** The numbers of a list under a key. */
  List<Double> numbers(String key) {
    return items(key).stream().map(e -> e.node().asDouble()).toList();
  }

  /** All keys, in order. */
  List<String> keys() {
    return List.copyOf(node.propertyNames());
  }

  /** The one key of a node that has only one. */
  String onlyKey() {
    return keys().get(0);
  }

  /** What stands under the one key. */
  Entry only() {
    return get(onlyKey());
  }
}
