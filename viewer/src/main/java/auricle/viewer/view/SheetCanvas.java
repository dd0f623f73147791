package auricle.viewer.view;

import auricle.viewer.scene.Sheet;
import auricle.viewer.scene.Sheet.Area;
import auricle.viewer.scene.Sheet.Dot;
import auricle.viewer.scene.Sheet.Line;
import auricle.viewer.scene.Sheet.Words;
import auricle.viewer.viewmodel.Look;
import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.beans.binding.Bindings;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/** Shows a {@link Sheet} that is drawn anew whenever size, text or colours change. */
final class SheetCanvas extends Region {
  /** Draws a sheet of a size; em is the height of text. */
  interface Maker {
    Sheet draw(double width, double height, double em);
  }

  private static final double[] DASHES = {4, 3};
  private static final double[] SOLID = {};

  private final Canvas canvas = new Canvas();
  private final InvalidationListener again = o -> requestLayout();
  private final Look look;
  private Maker maker = (w, h, em) -> new Sheet(w, h);

  SheetCanvas(Look look, double height_em) {
    this.look = look;
    getChildren().add(canvas);
    setMinHeight(10);
    look.theme().addListener(new WeakInvalidationListener(again));
    look.textScale().addListener(new WeakInvalidationListener(again));
    prefHeightProperty()
        .bind(Bindings.createDoubleBinding(() -> height_em * Texts.em(look), look.textScale()));
  }

  /** Takes free height of a pane, up to as much as it is wide. */
  SheetCanvas growing() {
    VBox.setVgrow(this, Priority.ALWAYS);
    maxHeightProperty().bind(Bindings.max(widthProperty(), prefHeightProperty()));
    return this;
  }

  /** What is drawn from now on. */
  void show(Maker now, String inWords) {
    maker = now;
    setAccessibleText(inWords);
    paint();
  }

  @Override
  protected void layoutChildren() {
    paint();
  }

  private void paint() {
    if (getWidth() < 20 || getHeight() < 20) {
      return;
    }
    canvas.setWidth(getWidth());
    canvas.setHeight(getHeight());
    GraphicsContext g = canvas.getGraphicsContext2D();
    g.clearRect(0, 0, getWidth(), getHeight());
    double em = Texts.em(look);
    for (Object mark : maker.draw(getWidth(), getHeight(), em).marks()) {
      if (mark instanceof Line line) {
        line(g, line);
      } else if (mark instanceof Area area) {
        area(g, area);
      } else if (mark instanceof Words words) {
        words(g, words, em);
      }
    }
  }

  private void line(GraphicsContext g, Line line) {
    g.setStroke(Tones.of(line.tone(), look.theme().get()));
    g.setLineWidth(line.width());
    g.setLineCap(line.dashed() ? StrokeLineCap.BUTT : StrokeLineCap.ROUND);
    g.setLineJoin(StrokeLineJoin.ROUND);
    g.setLineDashes(line.dashed() ? DASHES : SOLID);
    g.strokePolyline(xs(line.dots()), ys(line.dots()), line.dots().size());
    g.setLineDashes(SOLID);
  }

  private void area(GraphicsContext g, Area area) {
    Color c = Tones.of(area.tone(), look.theme().get());
    g.setFill(c.deriveColor(0, 1, 1, area.opacity()));
    g.fillPolygon(xs(area.dots()), ys(area.dots()), area.dots().size());
  }

  private void words(GraphicsContext g, Words words, double em) {
    g.setFill(Tones.of(words.tone(), look.theme().get()));
    FontWeight weight = words.bold() ? FontWeight.BOLD : FontWeight.NORMAL;
    g.setFont(Font.font(Texts.FAMILY, weight, em * words.size()));
    g.setTextBaseline(VPos.CENTER);
    g.setTextAlign(
        switch (words.hold()) {
          case LEFT -> TextAlignment.LEFT;
          case MIDDLE -> TextAlignment.CENTER;
          case RIGHT -> TextAlignment.RIGHT;
        });
    g.fillText(words.text(), words.at().x(), words.at().y());
  }

  private static double[] xs(List<Dot> dots) {
    return dots.stream().mapToDouble(Dot::x).toArray();
  }

  private static double[] ys(List<Dot> dots) {
    return dots.stream().mapToDouble(Dot::y).toArray();
  }
}
