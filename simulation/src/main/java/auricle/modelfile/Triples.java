package auricle.modelfile;

import auricle.analysis.Triple;
import auricle.yamlfile.Entry;
import tools.jackson.databind.JsonNode;

/** Points and directions of a model file. */
final class Triples {
  private Triples() {}

  /** Three numbers. */
  static Triple triple(Entry e) {
    JsonNode node = e.node();
    return new Triple(node.path(0).asDouble(), node.path(1).asDouble(), node.path(2).asDouble());
  }

  /** Three numbers, or x, y, z with a sign. */
  static Triple direction(Entry e) {
    if (!e.node().isString()) {
      return triple(e);
    }
    String name = e.node().asString();
    double sign = name.startsWith("-") ? -1 : 1;
    char axis = name.charAt(name.length() - 1);
    return new Triple(axis == 'x' ? sign : 0, axis == 'y' ? sign : 0, axis == 'z' ? sign : 0);
  }
}
