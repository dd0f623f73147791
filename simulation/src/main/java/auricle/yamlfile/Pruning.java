package auricle.yamlfile;

import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Takes parts out of a tree without moving the rest. */
final class Pruning {
  private Pruning() {}

  /**
   * Removes what a JSON pointer names; an item of a list becomes empty, so that the items behind it
   * keep their places. Nothing happens for the root and for what is no pointer.
   */
  static void leaveOut(JsonNode tree, String pointer) {
    if (!pointer.startsWith("/")) {
      return;
    }
    JsonPointer place = JsonPointer.compile(pointer);
    JsonNode parent = tree.at(place.head());
    if (parent instanceof ObjectNode object) {
      object.remove(place.last().getMatchingProperty());
    } else if (parent instanceof ArrayNode array && place.last().getMatchingIndex() >= 0) {
      array.set(place.last().getMatchingIndex(), JsonNodeFactory.instance.nullNode());
    }
  }
}
