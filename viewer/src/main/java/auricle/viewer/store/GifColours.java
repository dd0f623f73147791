package auricle.viewer.store;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.IndexColorModel;
import java.util.Arrays;
import java.util.List;

/**
 * The 256 colours of a run of pictures that differ least from what the pictures hold, and the
 * pictures in them. One palette for all, so that nothing flickers from picture to picture; what
 * falls between two colours is spread over neighbouring pixels (Floyd and Steinberg 1976, An
 * adaptive algorithm for spatial grey scale, Proc Soc Inf Disp 17:75-77), so that shades of skin do
 * not break into bands.
 */
final class GifColours {
  private static final int[] SHIFT = {16, 8, 0};

  private static final int COLOURS = 256;

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
    float[] here = new float[3 * (w + 2)];
    float[] below = new float[3 * (w + 2)];
    for (int y = 0; y < h; y++) {
      frame.getRGB(0, y, w, 1, row, 0, w);
      for (int x = 0; x < w; x++) {
        places[y * w + x] = (byte) place(row[x], x, here, below);
      }
      float[] done = here;
      here = below;
      below = done;
      Arrays.fill(below, 0);
    }
    return drawn;
  }

  /** The colour of a pixel; what it is off is handed on to the right and to the row below. */
  private int place(int rgb, int x, float[] here, float[] below) {
    int wanted = 0;
    float[] exact = new float[3];
    for (int c = 0; c < 3; c++) {
      exact[c] = (rgb >> SHIFT[c] & 255) + here[3 * (x + 1) + c];
      wanted |= Math.max(0, Math.min(255, Math.round(exact[c]))) << SHIFT[c];
    }
    int place = nearest(wanted);
    for (int c = 0; c < 3; c++) {
      float off = exact[c] - (palette[place] >> SHIFT[c] & 255);
      here[3 * (x + 2) + c] += off * 7 / 16;
      below[3 * x + c] += off * 3 / 16;
      below[3 * (x + 1) + c] += off * 5 / 16;
      below[3 * (x + 2) + c] += off / 16;
    }
    return place;
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
