package auricle.anatomy;

import auricle.geometry.Vectors;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import javax.imageio.ImageIO;

/** A shaded picture of an ear: depth buffer, smooth normals, two lights and a highlight. */
final class EarPicture {
  private static final int WIDTH = 560;
  private static final int HEIGHT = 760;
  private static final double SCALE = 10;
  private static final int SPLIT = 1;
  private static final double CHEEK = 4;
  private static final Color SKIN = new Color(214, 178, 156);

  /** A direction of view: where the viewer is and what is up. */
  enum View {
    SIDE(new double[] {1, 0, 0}, new double[] {0, 0, 1}),
    FRONT(new double[] {0, 1, 0}, new double[] {0, 0, 1}),
    BACK(new double[] {0, -1, 0}, new double[] {0, 0, 1}),
    ABOVE(new double[] {0, 0, 1}, new double[] {0, 1, 0}),
    BELOW(new double[] {0, 0, -1}, new double[] {0, 1, 0}),
    FRONT_QUARTER(new double[] {0.75, 0.66, 0.1}, new double[] {0, 0, 1}),
    BACK_QUARTER(new double[] {0.6, -0.8, 0.1}, new double[] {0, 0, 1}),
    FRONT_BELOW(new double[] {0.8, 0.4, -0.4}, new double[] {0, 0, 1});

    private final double[] toViewer;
    private final double[] right;
    private final double[] up;

    View(double[] toViewer, double[] up) {
      this.toViewer = Vectors.unit(toViewer);
      this.right = Vectors.unit(Vectors.cross(up, this.toViewer));
      this.up = Vectors.cross(this.toViewer, this.right);
    }
  }

  private final View view;
  private final int width = WIDTH * SPLIT;
  private final int height = HEIGHT * SPLIT;
  private final double[] depth = new double[WIDTH * SPLIT * HEIGHT * SPLIT];
  private final BufferedImage image =
      new BufferedImage(WIDTH * SPLIT, HEIGHT * SPLIT, BufferedImage.TYPE_INT_RGB);

  EarPicture(View view) {
    this.view = view;
    Arrays.fill(depth, Double.NEGATIVE_INFINITY);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        image.setRGB(x, y, 0xe9edf0);
      }
    }
  }

  /** Draws all facets in the colours of their triangles. */
  EarPicture draw(EarSolid solid, IntFunction<Color> colour) {
    for (EarSolid.Facet f : solid.facets()) {
      draw(f, colour.apply(f.source()));
    }
    return this;
  }

  /** Draws the head's surface: the mastoid plane behind, rising to the cheek in front. */
  EarPicture head() {
    for (int y = -45; y < 45; y++) {
      for (int z = -45; z < 45; z += 5) {
        strip(y, z, z + 5);
      }
    }
    return this;
  }

  private void strip(int y, int low, int high) {
    double[][] p = {head(y, low), head(y + 1, low), head(y + 1, high), head(y, high)};
    double[] a = headNormal(y);
    double[] b = headNormal(y + 1);
    draw(new EarSolid.Facet(List.of(p[0], p[1], p[2]), List.of(a, b, b), 0), SKIN);
    draw(new EarSolid.Facet(List.of(p[0], p[2], p[3]), List.of(a, b, a), 0), SKIN);
  }

  private static double[] head(double y, double z) {
    return new double[] {CHEEK * Steps.rise((y - 6) / 18), y, z};
  }

  private static double[] headNormal(double y) {
    return Vectors.unit(new double[] {1, head(y - 0.1, 0)[0] - head(y + 0.1, 0)[0], 0});
  }

  private double[] screen(double[] p) {
    double s = SCALE * SPLIT;
    return new double[] {
      width / 2.0 + s * Vectors.dot(p, view.right) - (view.right[0] * 8 * s),
      height / 2.0 - s * Vectors.dot(p, view.up) + view.up[0] * 8 * s,
      Vectors.dot(p, view.toViewer)
    };
  }

  private void draw(EarSolid.Facet f, Color colour) {
    double[] a = screen(f.points().get(0));
    double[] b = screen(f.points().get(1));
    double[] c = screen(f.points().get(2));
    double area = (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
    if (Math.abs(area) < 1e-9) {
      return;
    }
    int x0 = (int) Math.max(0, Math.floor(Math.min(a[0], Math.min(b[0], c[0]))));
    int x1 = (int) Math.min(width - 1, Math.ceil(Math.max(a[0], Math.max(b[0], c[0]))));
    int y0 = (int) Math.max(0, Math.floor(Math.min(a[1], Math.min(b[1], c[1]))));
    int y1 = (int) Math.min(height - 1, Math.ceil(Math.max(a[1], Math.max(b[1], c[1]))));
    for (int y = y0; y <= y1; y++) {
      for (int x = x0; x <= x1; x++) {
        double wb = ((x - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (y - a[1])) / area;
        double wc = ((b[0] - a[0]) * (y - a[1]) - (x - a[0]) * (b[1] - a[1])) / area;
        double wa = 1 - wb - wc;
        if (wa < 0 || wb < 0 || wc < 0) {
          continue;
        }
        double z = wa * a[2] + wb * b[2] + wc * c[2];
        if (z > depth[y * width + x]) {
          depth[y * width + x] = z;
          image.setRGB(x, y, shade(f, wa, wb, wc, colour));
        }
      }
    }
  }

  private int shade(EarSolid.Facet f, double wa, double wb, double wc, Color colour) {
    double[] n = Vectors.scale(wa, f.normals().get(0));
    n = Vectors.add(n, wb, f.normals().get(1));
    n = Vectors.unit(Vectors.add(n, wc, f.normals().get(2)));
    double[] key = light(0.35, 0.75, 0.6);
    double[] fill = light(-0.7, 0.1, 0.6);
    double diffuse = 0.22 + 0.72 * Math.max(0, Vectors.dot(n, key));
    diffuse += 0.16 * Math.max(0, Vectors.dot(n, fill));
    double[] halfway = Vectors.unit(Vectors.add(key, 1, view.toViewer));
    double shine = 40 * Math.pow(Math.max(0, Vectors.dot(n, halfway)), 24);
    int r = level(colour.getRed() * diffuse + shine);
    int g = level(colour.getGreen() * diffuse + shine);
    int b = level(colour.getBlue() * diffuse + shine);
    return r << 16 | g << 8 | b;
  }

  private double[] light(double right, double up, double towards) {
    double[] d = Vectors.scale(right, view.right);
    d = Vectors.add(d, up, view.up);
    return Vectors.unit(Vectors.add(d, towards, view.toViewer));
  }

  private static int level(double value) {
    return (int) Math.max(0, Math.min(255, value));
  }

  /** The picture at its final size. */
  BufferedImage image() {
    BufferedImage small = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    var g = small.createGraphics();
    g.setRenderingHint(
        java.awt.RenderingHints.KEY_INTERPOLATION,
        java.awt.RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.drawImage(image, 0, 0, WIDTH, HEIGHT, null);
    g.dispose();
    return small;
  }

  /** Several pictures side by side in a file. */
  static void write(Path file, BufferedImage... images) throws IOException {
    BufferedImage all =
        new BufferedImage(WIDTH * images.length, HEIGHT, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < images.length; i++) {
      all.getGraphics().drawImage(images[i], WIDTH * i, 0, null);
    }
    Files.createDirectories(file.toAbsolutePath().getParent());
    ImageIO.write(all, "png", file.toFile());
  }
}
