package auricle.viewer.view;

import auricle.viewer.viewmodel.Look;
import java.util.Locale;
import java.util.Objects;
import javafx.scene.layout.Region;

/** Colours and size of type of the whole window, as they are asked for. */
final class Dress {
  private final Region window;
  private final Columns columns;
  private final Look look;

  Dress(Region window, Columns columns, Look look) {
    this.window = window;
    this.columns = columns;
    this.look = look;
    window
        .getStylesheets()
        .add(Objects.requireNonNull(Dress.class.getResource("viewer.css")).toExternalForm());
    window.getStyleClass().add("root");
    theme();
  }

  /** Follows what is asked for from now on. */
  void follow(Tabs results) {
    look.theme().addListener(o -> theme());
    look.textScale().addListener(o -> theme());
    look.fullScreen().addListener(o -> project(results));
    results.getSelectionModel().selectedItemProperty().addListener(o -> project(results));
  }

  private void theme() {
    double em = Texts.em(look);
    window.getStyleClass().removeAll("light", "dark", "contrast");
    window.getStyleClass().add(look.theme().get().name().toLowerCase(Locale.ROOT));
    columns.text(em);
    window.setStyle("-fx-font-size: " + Math.round(em * 10) / 10.0 + "px;");
  }

  /** A lesson that fills the screen is set in large type. */
  private void project(Tabs results) {
    boolean lesson = look.fullScreen().get() && results.openTitle().equals("Lessons");
    window.getStyleClass().remove("projected");
    if (lesson) {
      window.getStyleClass().add("projected");
    }
    columns.project(lesson);
  }
}
