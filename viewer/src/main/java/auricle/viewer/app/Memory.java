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

  Memory(Stage stage, Settings settings, Look look, Workbench bench) {
    this.stage = stage;
    this.settings = settings;
    this.look = look;
    this.bench = bench;
  }

  /** As it was left; at the first start as large as the screen allows, text to match. */
  void recall() {
    Rectangle2D screen = Screen.getPrimary().getVisualBounds();
    double width = Math.min(screen.getWidth(), settings.number("window.width", screen.getWidth()));
    double height =
        Math.min(screen.getHeight(), settings.number("window.height", screen.getHeight()));
    stage.setWidth(width);
    stage.setHeight(height);
    double x = settings.number("window.x", screen.getMinX());
    double y = settings.number("window.y", screen.getMinY());
    if (screen.contains(x, y)) {
      stage.setX(x);
      stage.setY(y);
    }
    double usual = Math.max(1, Math.min(1.35, height / 1000));
    look.textScale().set(settings.number("text.scale", usual));
    String theme = settings.text("theme", Look.Theme.LIGHT.name());
    for (Look.Theme t : Look.Theme.values()) {
      if (t.name().equals(theme)) {
        look.theme().set(t);
      }
    }
    bench.openTab(settings.text("tab", "Balance"));
  }

  /** Remembers it. */
  void keep() {
    settings.set("window.width", stage.getWidth());
    settings.set("window.height", stage.getHeight());
    settings.set("window.x", stage.getX());
    settings.set("window.y", stage.getY());
    settings.set("text.scale", look.textScale().get());
    settings.set("theme", look.theme().get().name());
    settings.set("tab", bench.openTab());
    settings.save();
  }
}
