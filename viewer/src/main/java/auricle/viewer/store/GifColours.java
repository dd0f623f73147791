package auricle.viewer.store;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.IndexColorModel;
import java.util.Arrays;
import java.util.List;

/**
 * The 256 colours of a run of pictures that differ least from what the pictures hold, and the
 * pictures in them. One palette for all, so that nothing flickers from picture to picture. What
 * falls between two colours is drawn with both, so that shades of skin do not break into bands, by
 * a pattern that stays in its place from picture to picture (Bayer 1973, An optimum method for
 * two-level rendition of continuous-tone pictures, Proc IEEE Int Conf Commun 26:11-15): what is
 * handed on from pixel to pixel instead is seen as grain that crawls.
 */
final class GifColours {
  private static final int[] SHIFT = {16, 8, 0};

  private static final int COLOURS = 256;

  /** In which order the pixels of a square of four by four take the farther colour. */
  private static final int[] ORDER = {0, 8, 2, 10, 12, 4, 14, 6, 3, 11, 1, 9, 15, 7, 13, 5};

  private final int[] palette;
  private final IndexColorModel model;

  /** Palette number of the colour nearest to each cell of colours; −1 where it was not asked. */
  private final short[] nearest = new short[ColourBox.CELLS];

  private GifColours(int[] palette) {
    this.palette = palette;
    model = new IndexColorModel(8, palette.length, palette, 0, false, -1, 0);
    Arrays.fill(nearest, (short) -1);
  }

  /** The colours of pictures. */
  static GifColours of(List<BufferedImage> frames) {
    return new GifColours(Arrays.copyOf(ColourBox.palette(frames, COLOURS), COLOURS));
  }

  /** The colours by their numbers; unused ones are black. */
  int[] palette() {
    return palette.clone();
  }

  /** A picture in these colours. */
  BufferedImage drawn(BufferedImage frame) {
    int w = frame.getWidth();
    int h = frame.getHeight();
    BufferedImage drawn = new BufferedImage(w, h, BufferedImage.TYPE_BYTE_INDEXED, model);
    byte[] places = ((DataBufferByte) drawn.getRaster().getDataBuffer()).getData();
    int[] row = new int[w];
    for (int y = 0; y < h; y++) {
      frame.getRGB(0, y, w, 1, row, 0, w);
      for (int x = 0; x < w; x++) {
        double turn = (ORDER[4 * (y % 4) + x % 4] + 0.5) / ORDER.length;
        places[y * w + x] = (byte) place(row[x], turn);
      }
    }
    return drawn;
  }

  /**
   * The nearest colour, or the one on the other side of what is wanted.
   *
   * @param turn from 0 to 1: how far on the way to the other one the wanted colour must be for it
   */
  private int place(int rgb, double turn) {
    int near = nearest(rgb);
    int far = nearest(beyond(rgb, palette[near]));
    return share(rgb, palette[near], palette[far]) > turn ? far : near;
  }

  /** A colour as far from another as that is from a third, on its other side. */
  private static int beyond(int rgb, int from) {
    int beyond = 0;
    for (int shift : SHIFT) {
      int c = 2 * (rgb >> shift & 255) - (from >> shift & 255);
      beyond |= Math.max(0, Math.min(255, c)) << shift;
    }
    return beyond;
  }

  /** How far a colour is on the way from one to another; 0 if these are the same. */
  private static double share(int rgb, int from, int to) {
    int along = 0;
    for (int shift : SHIFT) {
      int start = from >> shift & 255;
      along += ((rgb >> shift & 255) - start) * ((to >> shift & 255) - start);
    }
    return (double) along / Math.max(1, apart(from, to));
  }

  private int nearest(int rgb) {
    int cell = ColourBox.cell(rgb);
    if (nearest[cell] < 0) {
      int best = 0;
      for (int i = 1; i < palette.length; i++) {
        best = apart(rgb, palette[i]) < apart(rgb, palette[best]) ? i : best;
      }
      nearest[cell] = (short) best;
    }
    return nearest[cell];
  }

  private static int apart(int a, int b) {
    int sum = 0;
    for (int shift : SHIFT) {
      int d = (a >> shift & 255) - (b >> shift & 255);
      sum += d * d;
    }
    return sum;
  }
}
