package auricle.viewer.view;

import auricle.viewer.scene.EarSurface;
import auricle.viewer.scene.Palette;
import java.math.BigDecimal;
import java.math.MathContext;
import javafx.geometry.Insets;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.BackgroundImage;
import javafx.scene.layout.BackgroundRepeat;
import javafx.scene.layout.BackgroundSize;
import javafx.scene.layout.CornerRadii;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Says what the colours of the ear mean, below the picture: over it, it would hide some of it. */
final class Legend extends FlowPane {
  private static final int PARTS = 4;

  Legend() {
    setId("legend");
    getStyleClass().add("legend");
    managedProperty().bind(visibleProperty());
    nothing();
  }

  /** No colours to explain. */
  void nothing() {
    setVisible(false);
  }

  /**
   * The scale of a field from nothing upwards.
   *
   * @param words what the numbers are
   * @param unit their unit
   * @param high number at the upper end
   */
  void scale(String words, String unit, double high) {
    Region bar = new Region();
    bar.getStyleClass().add("legend-bar");
    bar.setBackground(colours());
    HBox numbers = new HBox();
    for (int i = 0; i <= PARTS; i++) {
      numbers.getChildren().add(Texts.label(number(high * i / PARTS), "legend-tick"));
    }
    VBox scale = new VBox(bar, numbers);
    scale.getStyleClass().add("legend-scale");
    getChildren().setAll(Texts.label(words + ", " + unit, "legend-title"), scale);
    setAccessibleText(words + " from 0 to " + number(high) + " " + unit);
    setVisible(true);
  }

  private static Background colours() {
    BackgroundSize whole = new BackgroundSize(1, 1, true, true, false, false);
    return new Background(
        new BackgroundImage(
            Palette.AMOUNT.picture(),
            BackgroundRepeat.NO_REPEAT,
            BackgroundRepeat.NO_REPEAT,
            null,
            whole));
  }

  /** As many digits as a quarter of a round number has: none is rounded. */
  private static String number(double v) {
    return BigDecimal.valueOf(v).round(new MathContext(3)).stripTrailingZeros().toPlainString();
  }

  /** The regions by name. */
  void regions(EarSurface surface) {
    getChildren().clear();
    int i = 0;
    for (String name : RegionColours.names(surface)) {
      Region patch = new Region();
      patch.getStyleClass().add("legend-patch");
      patch.setBackground(
          new Background(
              new BackgroundFill(
                  Palette.KINDS.colour(RegionColours.at(i++)), CornerRadii.EMPTY, Insets.EMPTY)));
      HBox entry = new HBox(patch, Texts.label(name.replace('_', ' '), "legend-number"));
      entry.getStyleClass().add("legend-entry");
      getChildren().add(entry);
    }
    setAccessibleText("The regions of the ear by colour");
    setVisible(true);
  }
}
