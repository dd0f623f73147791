package auricle.viewer.view;

import auricle.report.UseNotice;
import auricle.viewer.scene.Sheet;
import auricle.viewer.store.AtomicFile;
import auricle.viewer.store.ShapeFiles;
import auricle.viewer.store.SvgFile;
import auricle.viewer.task.Moment;
import auricle.viewer.viewmodel.Look.Theme;
import auricle.viewer.viewmodel.Showing;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javax.imageio.ImageIO;

/** Writes what is shown as files: picture, section, shape. */
public final class Exports {
  /** Pixels a pixel of the screen becomes: a picture of 700 pixels prints 18 cm wide at 300 dpi. */
  private static final double PRINT_SCALE = 3;

  private final Workbench bench;
  private final Showing showing;

  /** Of what a window shows. */
  public Exports(Workbench bench, Showing showing) {
    this.bench = bench;
    this.showing = showing;
  }

  /** The three-dimensional picture as PNG at print size. */
  public void picture(Path file) throws IOException {
    AtomicFile.write(file, png(enlarged(bench.ear(), PRINT_SCALE, bench.em())));
  }

  /** Runs of pictures. */
  public Animation animation() {
    return new Animation(bench.ear(), showing, bench.em());
  }

  /** The section as SVG. */
  public void section(Path file) throws IOException {
    Optional<Sheet> sheet = bench.section().sheet(600, 460, 14);
    if (sheet.isPresent()) {
      SvgFile svg = new SvgFile(t -> web(Tones.of(t, Theme.LIGHT)), 14);
      String title =
          String.format(
              Locale.ROOT,
              "Section at level %.0f %%, %s",
              bench.section().level_percent(),
              label());
      AtomicFile.write(file, svg.text(sheet.get(), title, UseNotice.TEXT));
    }
  }

  /** The shape, by the file's ending: obj, stl or vtu. */
  public void shape(Path file) throws IOException {
    Optional<Moment> moment = showing.moment().get();
    if (moment.isEmpty()) {
      return;
    }
    var surface = moment.get().surface();
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    if (name.endsWith(".stl")) {
      AtomicFile.write(file, ShapeFiles.stl(surface));
    } else if (name.endsWith(".vtu")) {
      AtomicFile.write(file, ShapeFiles.vtu(surface, label() + ". " + UseNotice.TEXT));
    } else {
      AtomicFile.write(
          file, ShapeFiles.obj(surface, "auricle, " + label() + ". " + UseNotice.TEXT));
    }
  }

  private String label() {
    return showing
        .moment()
        .get()
        .map(m -> m.label() + (m.outcome().converged() ? "" : " (not at rest)"))
        .orElse("");
  }

  /**
   * A picture of the ear's pane, larger by a factor: laid out larger, text and all. A picture of it
   * that were drawn to scale instead would have its lamps at the wrong places.
   */
  static BufferedImage enlarged(EarPane pane, double scale, double em) {
    double width = pane.getWidth();
    double height = pane.getHeight();
    String style = pane.getStyle();
    pane.scene().still();
    pane.setManaged(false);
    pane.onFile(true);
    try {
      pane.setStyle("-fx-font-size: " + em * scale + "px; -fx-border-color: transparent;");
      pane.resize(scale * width, scale * height);
      pane.applyCss();
      pane.layout();
      return picture(pane);
    } finally {
      pane.onFile(false);
      pane.setStyle(style);
      pane.resize(width, height);
      pane.setManaged(true);
    }
  }

  /** An image as PNG. */
  public static byte[] png(WritableImage image) throws IOException {
    return png(copy(image));
  }

  /** A picture as PNG. */
  static byte[] png(BufferedImage picture) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(picture, "png", out);
    return out.toByteArray();
  }

  /** A node as it stands on the screen. */
  private static BufferedImage picture(Node node) {
    SnapshotParameters parameters = new SnapshotParameters();
    parameters.setDepthBuffer(true);
    return copy(node.snapshot(parameters, null));
  }

  private static BufferedImage copy(WritableImage image) {
    int w = (int) image.getWidth();
    int h = (int) image.getHeight();
    int[] pixels = new int[w * h];
    image.getPixelReader().getPixels(0, 0, w, h, PixelFormat.getIntArgbInstance(), pixels, 0, w);
    BufferedImage copy = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
    copy.setRGB(0, 0, w, h, pixels, 0, w);
    return copy;
  }

  private static String web(Color c) {
    return String.format(
        "#%02x%02x%02x",
        Math.round(255 * c.getRed()),
        Math.round(255 * c.getGreen()),
        Math.round(255 * c.getBlue()));
  }
}
