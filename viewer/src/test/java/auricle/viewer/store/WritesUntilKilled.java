package auricle.viewer.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** A program that keeps one copy of unsaved work after another in a folder until it is killed. */
final class WritesUntilKilled {
  private static final int LINES = 200_000;

  private WritesUntilKilled() {}

  /** The copy of a number: its first line and its last say which, and all between are alike. */
  static String copy(int number) {
    return "begin "
        + number
        + "\n"
        + (number + " of many\n").repeat(LINES)
        + "end "
        + number
        + "\n";
  }

  /** Says a line when the first copy is there, so that the killer knows. */
  public static void main(String[] arguments) throws IOException {
    Recovery recovery = Recovery.claim(Path.of(arguments[0]));
    for (int i = 1; ; i++) {
      recovery.keep(Optional.empty(), copy(i));
      if (i == 1) {
        System.out.println("writing");
      }
    }
  }
}
