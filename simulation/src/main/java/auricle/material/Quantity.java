package auricle.material;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Something that the model reads from the tables.
 *
 * @param key key of its rows, words with dots between them; a word may end in a place for a name,
 *     in braces, as in {@code cartilage.{region}.modulus_mpa}
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
  /** The names that stand in the places in braces; empty if a slot is not of this quantity. */
  Optional<List<String>> namesIn(String slot) {
    List<String> asked = words(key);
    List<String> found = words(slot);
    boolean fits = asked.size() == found.size();
    List<String> names = new ArrayList<>();
    for (int i = 0; fits && i < asked.size(); i++) {
      int brace = asked.get(i).indexOf('{');
      fits =
          brace < 0
              ? asked.get(i).equals(found.get(i))
              : found.get(i).startsWith(asked.get(i).substring(0, brace));
      if (fits && brace >= 0) {
        names.add(found.get(i).substring(brace));
        fits = isName(found.get(i).substring(brace));
      }
    }
    return fits ? Optional.of(List.copyOf(names)) : Optional.empty();
  }

  private static List<String> words(String key) {
    return Arrays.asList(key.split("\\.", -1));
  }

  private static boolean isName(String text) {
    return !text.isEmpty()
        && text.chars().allMatch(c -> c == '_' || c >= 'a' && c <= 'z' || c >= '0' && c <= '9');
  }

  /** What kinds of names stand in braces, such as {@code region}. */
  List<String> kindsOfNames() {
    return words(key).stream()
        .filter(word -> word.indexOf('{') >= 0)
        .map(word -> word.substring(word.indexOf('{') + 1, word.length() - 1))
        .toList();
  }

  /** Whether a number can be. */
  boolean allows(double value) {
    return value >= lowest && value <= highest;
  }
}
