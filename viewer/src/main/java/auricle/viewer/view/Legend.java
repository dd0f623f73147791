package auricle.viewer.view;

import auricle.viewer.scene.EarSurface;
import auricle.viewer.scene.Palette;
import auricle.viewer.viewmodel.Look;
import java.math.BigDecimal;
import java.math.MathContext;
import javafx.geometry.Pos;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Rectangle;

/** Says what the colours of the ear mean. */
final class Legend extends VBox {
  private final Look look;

  Legend(Look look) {
    this.look = look;
    getStyleClass().add("legend");
    setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    setMouseTransparent(true);
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
    getChildren().clear();
    setVisible(true);
    double em = Texts.em(look);
    ImageView bar = new ImageView(Palette.AMOUNT.picture());
    bar.setFitWidth(16 * em);
    bar.setFitHeight(em);
    HBox numbers = new HBox();
    for (int i = 0; i <= 4; i++) {
      var label = Texts.label(number(high * i / 4), "legend-number");
      label.setMinWidth(4 * em);
      label.setPrefWidth(4 * em);
      label.setAlignment(Pos.CENTER);
      numbers.getChildren().add(label);
    }
    HBox middle = new HBox(bar);
    middle.setAlignment(Pos.CENTER);
    getChildren().addAll(Texts.label(words + ", " + unit, "legend-title"), middle, numbers);
    setAccessibleText(words + " from 0 to " + number(high) + " " + unit);
  }

  /** As many digits as a quarter of a round number has: none is rounded. */
  private static String number(double v) {
    return BigDecimal.valueOf(v).round(new MathContext(3)).stripTrailingZeros().toPlainString();
  }

  /** The regions by name. */
  void regions(EarSurface surface) {
    getChildren().clear();
    setVisible(true);
    FlowPane flow = new FlowPane(8, 3);
    flow.setPrefWrapLength(26 * Texts.em(look));
    int i = 0;
    for (String name : RegionColours.names(surface)) {
      Rectangle patch = new Rectangle(Texts.em(look), 0.8 * Texts.em(look));
      patch.setFill(Palette.KINDS.colour(RegionColours.at(i++)));
      HBox entry = new HBox(4, patch, Texts.label(name.replace('_', ' '), "legend-number"));
      entry.setAlignment(Pos.CENTER_LEFT);
      flow.getChildren().add(entry);
    }
    getChildren().add(flow);
  }
}
