package auricle.mesh;

import auricle.diagnostics.Findings;
import java.util.ArrayList;
import java.util.List;

/** Faults of one kind: how many there are, and the first few in words. */
final class Offenders {
  private static final int SHOWN = 3;

  private final List<String> first = new ArrayList<>();
  private int count;

  /** Notes one more. */
  void add(String what) {
    if (count++ < SHOWN) {
      first.add(what);
    }
  }

  /** How many there are. */
  int count() {
    return count;
  }

  /** Adds one error for all of them, if there are any. */
  void error(Findings findings, String where, String noun, String expected, String remedy) {
    if (count > 0) {
      findings.error(where, words(noun), expected, remedy);
    }
  }

  /** Adds one warning for all of them, if there are any. */
  void warning(Findings findings, String where, String noun, String expected, String remedy) {
    if (count > 0) {
      findings.warning(where, words(noun), expected, remedy);
    }
  }

  /** "12 pinched vertices: vertex 3 …, vertex 7 …, vertex 9 … and 9 more". */
  private String words(String noun) {
    String listed = count + " " + noun + ": " + String.join("; ", first);
    return count > first.size() ? listed + " and " + (count - first.size()) + " more" : listed;
  }
}
