package auricle.report;

import auricle.assessment.Limit;
import auricle.material.Confidence;
import java.util.ArrayList;
import java.util.List;

/** Notes on the limits that a text refers to: each has a number, and is told once, at the end. */
final class LimitNotes {
  private final List<Limit> limits = new ArrayList<>();

  /** What refers to the note on a limit, such as "[2]". */
  String mark(Limit limit) {
    if (!limits.contains(limit)) {
      limits.add(limit);
    }
    return "[" + (limits.indexOf(limit) + 1) + "]";
  }

  /** The notes, a heading above them; nothing if none was referred to. */
  String text() {
    StringBuilder text = new StringBuilder(limits.isEmpty() ? "" : "Limits, and who says so\n");
    limits.forEach(limit -> text.append(note(limit)));
    return text.append(limits.isEmpty() ? "" : "\n").toString();
  }

  private String note(Limit limit) {
    String sure = Confidence.of(limit.confidence()).map(c -> " (" + c.words() + ")").orElse("");
    String words = (limit.value() == 0 ? "" : amount(limit) + ": ") + limit.source() + sure;
    return Lines.of("  %-3s".formatted(mark(limit)), 6, words);
  }

  /** A limit without a unit is a share. */
  private static String amount(Limit limit) {
    return limit.unit().isEmpty()
        ? TextTable.number(100 * limit.value(), 0) + " %"
        : MaterialWords.number(limit.value()) + " " + limit.unit();
  }
}
