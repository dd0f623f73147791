package auricle.material;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Something that the model reads from the tables.
 *
 * @param key key of its rows, with a place for a name in braces where it has one, such as {@code
 *     cartilage.{region}.modulus_mpa}
 * @param unit of its numbers; {@code -} for a pure number
 * @param lowest outside of this a number is a slip, unit of the number
 * @param highest outside of this a number is a slip, unit of the number
 * @param table where its rows stand
 * @param meaning in words
 * @param usedBy what reads it
 */
public record Quantity(
    String key,
    String unit,
    double lowest,
    double highest,
    String table,
    String meaning,
    String usedBy) {
  private static final Pattern NAME = Pattern.compile("\\{(\\w+)}");

  /** The names that stand in the places in braces; empty if a slot is not of this quantity. */
  Optional<List<String>> namesIn(String slot) {
    String quoted = key.replace(".", "\\.");
    Matcher m = Pattern.compile(NAME.matcher(quoted).replaceAll("([a-z0-9_]+)")).matcher(slot);
    if (!m.matches()) {
      return Optional.empty();
    }
    return Optional.of(IntStream.rangeClosed(1, m.groupCount()).mapToObj(m::group).toList());
  }

  /** What kinds of names stand in braces, such as {@code region}. */
  List<String> kindsOfNames() {
    return NAME.matcher(key).results().map(r -> r.group(1)).toList();
  }

  /** Whether a number can be. */
  boolean allows(double value) {
    return value >= lowest && value <= highest;
  }
}
