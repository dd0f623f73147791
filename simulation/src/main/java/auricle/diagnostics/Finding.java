package auricle.diagnostics;

/**
 * One thing that is wrong, or doubtful, in an input: where, what was found there, what was
 * expected, and how to mend it.
 *
 * @param severity whether the input can be used all the same
 * @param where file and place: line and column, key, face or vertex
 * @param found what stands there
 * @param expected what could stand there
 * @param remedy what to do; empty where it is plain from what was expected
 */
public record Finding(
    Severity severity, String where, String found, String expected, String remedy) {

  /** Whether a finding stops the work. */
  public enum Severity {
    /** The input cannot be used. */
    ERROR,
    /** The input can be used, but the user should know. */
    WARNING
  }

  /** A finding that stops the work. */
  public static Finding error(String where, String found, String expected, String remedy) {
    return new Finding(Severity.ERROR, where, found, expected, remedy);
  }

  /** A finding that does not stop the work. */
  public static Finding warning(String where, String found, String expected, String remedy) {
    return new Finding(Severity.WARNING, where, found, expected, remedy);
  }

  /** The same finding at a place that is better known. */
  public Finding at(String place) {
    return new Finding(severity, place, found, expected, remedy);
  }

  /** Whether this finding stops the work. */
  public boolean isError() {
    return severity == Severity.ERROR;
  }

  /** All of it in one line. */
  public String line() {
    StringBuilder line = new StringBuilder(where).append(": ").append(found);
    if (!expected.isEmpty()) {
      line.append("; expected ").append(expected);
    }
    if (!remedy.isEmpty()) {
      line.append(". ").append(remedy);
    }
    return line.toString();
  }
}
