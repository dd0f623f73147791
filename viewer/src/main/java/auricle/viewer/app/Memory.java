package auricle.viewer.app;

import auricle.viewer.store.Settings;
import auricle.viewer.view.Workbench;
import auricle.viewer.viewmodel.Look;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** Brings window and view back as they were left. */
final class Memory {
  private final Stage stage;
  private final Settings settings;
  private final Look look;
  private final Workbench bench;
  private double recalled = 1;
  private double width;
  private double height;

  Memory(Stage stage, Settings settings, Look look, Workbench bench) {
    this.stage = stage;
    this.settings = settings;
    this.look = look;
    this.bench = bench;
  }

  /** As it was left; at the first start as large as the screen allows, text to match. */
  void recall() {
    Rectangle2D screen = Screen.getPrimary().getVisualBounds();
    width = Math.min(screen.getWidth(), settings.number("window.width", screen.getWidth()));
    height = Math.min(screen.getHeight(), settings.number("window.height", screen.getHeight()));
    size();
    double x = settings.number("window.x", screen.getMinX());
    double y = settings.number("window.y", screen.getMinY());
    if (screen.contains(x, y)) {
      stage.setX(x);
      stage.setY(y);
    }
    recalled = settings.number("text.scale", usualText(height));
    look.textScale().set(recalled);
    String theme = settings.text("theme", Look.Theme.LIGHT.name());
    for (Look.Theme t : Look.Theme.values()) {
      if (t.name().equals(theme)) {
        look.theme().set(t);
      }
    }
    bench.openTab(settings.text("tab", "Balance"));
    double left = settings.number("pane.left.em", 0);
    double right = settings.number("pane.right.em", 0);
    if (left > 0 && right > 0) {
      bench.sidePanes(left, right, width);
    }
  }

  private void size() {
    stage.setWidth(width);
    stage.setHeight(height);
  }

  /**
   * Asks for the size again if the window has opened far smaller: some window managers open any
   * window of JavaFX (21) at 200 × 200 pixels, and give it its size once it is there.
   */
  void insist() {
    if (stage.getWidth() < width / 2 && stage.getHeight() < height / 2) {
      size();
    }
  }

  /** Larger letters for a higher window. */
  private static double usualText(double height) {
    return Math.max(1, Math.min(1.35, height / 1000));
  }

  /** Remembers it. */
  void keep() {
    settings.set("window.width", stage.getWidth());
    settings.set("window.height", stage.getHeight());
    settings.set("window.x", stage.getX());
    settings.set("window.y", stage.getY());
    rememberText();
    settings.set("theme", look.theme().get().name());
    settings.set("tab", bench.openTab());
    settings.set("pane.left.em", bench.leftPane_em());
    settings.set("pane.right.em", bench.rightPane_em());
    settings.save();
  }

  /** Text that was never set by hand follows the window again, on whatever screen it opens. */
  private void rememberText() {
    double scale = look.textScale().get();
    if (Math.abs(scale - recalled) > 1e-6) {
      settings.set("text.scale", scale);
    }
  }
}
