package auricle.meshfile;

import auricle.diagnostics.Findings;

/** Faults in single lines of a text file: the first twenty in full, then their number. */
final class LineFaults {
  private static final int SHOWN = 20;

  private final String where;
  private final Findings findings;
  private int count;

  LineFaults(String where, Findings findings) {
    this.where = where;
    this.findings = findings;
  }

  /** Adds an error at a line, counted from 1. */
  void add(int line, String found, String expected) {
    if (count++ < SHOWN) {
      findings.error(where + ", line " + line, found, expected, "");
    }
  }

  /** Tells how many were left out. */
  void end() {
    if (count > SHOWN) {
      findings.error(where, (count - SHOWN) + " further lines that cannot be read", "", "");
    }
  }
}
