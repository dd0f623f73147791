package auricle.viewer.view;

import auricle.viewer.scene.EarSurface;
import auricle.viewer.scene.Palette;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.Paint;
import java.util.Locale;
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

  void show(Paint paint, double high, EarSurface surface) {
    getChildren().clear();
    setVisible(paint != Paint.SKIN);
    if (paint.isField()) {
      scale(paint, high);
    } else if (paint == Paint.REGIONS) {
      regions(surface);
    }
  }

  /** Says that a field is not known at the moment that is shown. */
  void unknown(Paint paint) {
    String words = paint.label() + " is known for the steps, not for later times";
    getChildren().setAll(Texts.label(words, "legend-title"));
    setVisible(true);
  }

  private void scale(Paint paint, double high) {
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
    getChildren()
        .addAll(Texts.label(paint.label() + ", " + paint.unit(), "legend-title"), middle, numbers);
    setAccessibleText(paint.label() + " from 0 to " + number(high) + " " + paint.unit());
  }

  private static String number(double v) {
    return v == 0
        ? "0"
        : String.format(
            Locale.ROOT, v < 0.1 ? "%.3f" : v < 1 ? "%.2f" : v < 10 ? "%.1f" : "%.0f", v);
  }

  private void regions(EarSurface surface) {
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
