package auricle.viewer.view;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Pictures drawn one after the other, then kept in files; what fails is told in a sentence. */
final class PictureRun {
  private static final String FAILED = "Cannot write the animation: ";

  private final int count;
  private final Drawing drawing;
  private final Keeping keeping;
  private final List<BufferedImage> pictures = new ArrayList<>();
  private List<String> wrong = List.of();

  /** What draws. */
  interface Drawing {
    /** The picture of a place in the run. */
    BufferedImage picture(int index);
  }

  /** What writes the files. */
  interface Keeping {
    /** Keeps all pictures, in their order. */
    void keep(List<BufferedImage> pictures) throws IOException;
  }

  PictureRun(int count, Drawing drawing, Keeping keeping) {
    this.count = count;
    this.drawing = drawing;
    this.keeping = keeping;
  }

  /**
   * Draws the next picture; on the screen's thread.
   *
   * @return whether one was drawn: not if all are, or if it failed
   */
  boolean drawNext() {
    if (pictures.size() == count || !wrong.isEmpty()) {
      return false;
    }
    try {
      pictures.add(drawing.picture(pictures.size()));
      return true;
    } catch (RuntimeException | OutOfMemoryError e) {
      wrong = failed(e);
      return false;
    }
  }

  /**
   * Keeps what was drawn, unless that failed; takes seconds.
   *
   * @return nothing, or why there is no animation
   */
  List<String> keep() {
    if (wrong.isEmpty()) {
      try {
        keeping.keep(List.copyOf(pictures));
      } catch (IOException e) {
        wrong = List.of(FAILED + e.getMessage() + ".");
      } catch (RuntimeException | OutOfMemoryError e) {
        wrong = failed(e);
      }
    }
    pictures.clear();
    return wrong;
  }

  private static List<String> failed(Throwable e) {
    String why =
        e instanceof OutOfMemoryError
            ? "there is not enough memory for pictures of this size; choose a smaller height."
            : "the program made an error of its own: " + e + ".";
    return List.of(FAILED + why);
  }
}
