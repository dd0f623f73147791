package auricle.report;

/** Words in lines that fit the terminal. */
final class Lines {
  private static final int WIDTH = 110;

  private Lines() {}

  /**
   * The lines.
   *
   * @param first what the first line begins with
   * @param indent blanks that the others begin with
   */
  static String of(String first, int indent, String words) {
    StringBuilder line = new StringBuilder(first);
    StringBuilder lines = new StringBuilder();
    for (String word : words.split(" ", -1)) {
      if (line.length() + 1 + word.length() > WIDTH) {
        lines.append(line).append('\n');
        line = new StringBuilder(" ".repeat(indent - 1));
      }
      line.append(' ').append(word);
    }
    return lines.append(line).append('\n').toString();
  }
}
