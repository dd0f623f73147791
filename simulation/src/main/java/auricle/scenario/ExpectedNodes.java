package auricle.scenario;

import java.util.Locale;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What should come out, as it stands in files. */
final class ExpectedNodes {
  private ExpectedNodes() {}

  static ObjectNode expected(Expected expected) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    if (!expected.converged()) {
      node.put("converged", false);
    }
    expected.cautions().forEach(c -> node.withArray("/cautions").add(c.key()));
    expected.noCautions().forEach(c -> node.withArray("/no_cautions").add(c.key()));
    expected.figures().forEach(x -> figure(x, node.withArray("/figures").addObject()));
    return node;
  }

  private static void figure(Expectation x, ObjectNode node) {
    node.put(x.kind().key(), x.subject());
    if (x.kind() == Expectation.Kind.CHANGE) {
      node.put("from", x.from().words());
      node.put("to", x.to().words());
    } else {
      node.put("at", x.to().words());
    }
    if (!x.over().isEmpty()) {
      node.put("over", x.over());
    }
    x.range().ifPresent(r -> range(r, node.putArray("range")));
    x.sign().ifPresent(s -> node.put("sign", lower(s)));
    if (x.byAtLeast() != 0) {
      EarNodes.number(node, "by_at_least", x.byAtLeast());
    }
    x.otherSide().ifPresent(s -> node.put("other_side", lower(s)));
    node.put("because", x.because());
  }

  private static void range(Expectation.Bounds range, ArrayNode list) {
    EarNodes.number(list, range.low());
    EarNodes.number(list, range.high());
  }

  private static String lower(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }
}
