package auricle.viewer.app;

import java.nio.file.Files;
import java.nio.file.Path;

/**
 * How JavaFX (21) is to draw on this machine. It reads these switches once, when it starts; one
 * that is given on the command line stays.
 *
 * <ul>
 *   <li>{@code prism.forceGPU}: it draws in three dimensions also where a program stands in for the
 *       graphics card.
 *   <li>{@code prism.forceUploadingPainter}: a frame is drawn beside the window, and only what has
 *       changed is handed to it. Without a graphics card this is by far the cheaper way: the usual
 *       one lets the processor paint the whole window for every frame, whatever has changed.
 *   <li>{@code prism.lcdtext}: letters are smoothed in grey, not by the colours of a screen's
 *       stripes: those are wrong on pictures and projectors, and at the edges of letters single
 *       pixels were black.
 * </ul>
 */
final class DrawingSwitches {
  /** Where Linux keeps its graphics cards. */
  private static final Path CARDS = Path.of("/dev/dri");

  private DrawingSwitches() {}

  /** Sets them; to be called before JavaFX starts. */
  static void set() {
    give("prism.forceGPU", true);
    give("prism.lcdtext", false);
    give("prism.forceUploadingPainter", isDrawnByProcessor(System.getProperty("os.name"), CARDS));
  }

  /**
   * Whether there is no graphics card. Known of Linux alone; elsewhere there always is one.
   *
   * @param system name of the operating system
   * @param cards folder of the graphics cards, if there are any
   */
  static boolean isDrawnByProcessor(String system, Path cards) {
    return system.startsWith("Linux") && !Files.exists(cards);
  }

  private static void give(String name, boolean value) {
    if (System.getProperty(name) == null) {
      System.setProperty(name, Boolean.toString(value));
    }
  }
}
