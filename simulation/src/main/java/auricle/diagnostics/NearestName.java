package auricle.diagnostics;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds the known name that a mistyped one was meant to be. */
public final class NearestName {
  private NearestName() {}

  /**
   * The known name nearest to what was typed by edit distance (Levenshtein 1966, with a swap of
   * neighbours as one edit), if it differs in no more than a third of its letters or begins alike
   * up to the unit: {@code thickness_cm} finds {@code thickness_mm}.
   */
  public static Optional<String> of(String typed, Collection<String> known) {
    return known.stream()
        .filter(
            name -> distance(typed, name) <= Math.max(1, name.length() / 3) || alike(typed, name))
        .min(Comparator.<String>comparingInt(n -> distance(typed, n)).thenComparing(n -> n));
  }

  /** "Did you mean …?" for the nearest name, else the known names; for a remedy. */
  public static String hint(String typed, Collection<String> known) {
    return of(typed, known)
        .map(name -> "Did you mean '" + name + "'?")
        .orElseGet(
            () ->
                known.isEmpty()
                    ? ""
                    : "Known: " + String.join(", ", known.stream().sorted().toList()));
  }

  private static boolean alike(String typed, String name) {
    return stem(typed).length() > 2 && stem(typed).equals(stem(name));
  }

  private static String stem(String name) {
    int cut = name.indexOf('_');
    return cut < 0 ? name : name.substring(0, cut);
  }

  /** Number of letters to insert, delete, replace or swap to make one of the other. */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : step(d, a, b, i, j);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(int[][] d, String a, String b, int i, int j) {
    int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int least = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + same);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
  }
}
