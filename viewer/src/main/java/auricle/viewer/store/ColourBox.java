package auricle.viewer.store;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Pixels of like colour, split where they differ most: the box with the greatest sum of squared
 * deviations is cut at its mean across its widest channel, until there are enough (Wan,
 * Prusinkiewicz and Wong 1990, Variance-based color image quantization for frame buffer display,
 * Color Res Appl 15:52-58).
 */
final class ColourBox {
  private static final int BITS = 6;

  /** Number of the cells that colours are counted in. */
  static final int CELLS = 1 << 3 * BITS;

  private static final int CHANNELS = 3;

  /** Of every cell: pixels, then the sums of red, green and blue. */
  private final long[][] counts;

  private final List<Integer> cells;
  private final double[] mean = new double[CHANNELS];
  private final double[] spread = new double[CHANNELS];

  private ColourBox(long[][] counts, List<Integer> cells) {
    this.counts = counts;
    this.cells = cells;
    long pixels = cells.stream().mapToLong(cell -> counts[0][cell]).sum();
    for (int c = 0; c < CHANNELS; c++) {
      for (int cell : cells) {
        mean[c] += (double) counts[c + 1][cell] / pixels;
      }
      for (int cell : cells) {
        double off = colour(cell, c) - mean[c];
        spread[c] += counts[0][cell] * off * off;
      }
    }
  }

  /** Number of the cell of a colour. */
  static int cell(int rgb) {
    int low = 8 - BITS;
    return (rgb >> 16 + low & 63) << 2 * BITS | (rgb >> 8 + low & 63) << BITS | rgb >> low & 63;
  }

  /** The colours that differ least from those of pictures, at most so many. */
  static int[] palette(List<BufferedImage> frames, int most) {
    long[][] counts = new long[CHANNELS + 1][CELLS];
    frames.forEach(frame -> count(frame, counts));
    List<Integer> used = new ArrayList<>();
    for (int cell = 0; cell < CELLS; cell++) {
      if (counts[0][cell] > 0) {
        used.add(cell);
      }
    }
    List<ColourBox> boxes = new ArrayList<>(List.of(new ColourBox(counts, used)));
    while (boxes.size() < most) {
      ColourBox widest =
          boxes.stream().max(Comparator.comparingDouble(ColourBox::all)).orElseThrow();
      if (widest.cells.size() < 2) {
        break;
      }
      boxes.remove(widest);
      boxes.addAll(widest.split());
    }
    return boxes.stream().mapToInt(ColourBox::rgb).toArray();
  }

  private static void count(BufferedImage frame, long[][] counts) {
    int[] row = new int[frame.getWidth()];
    for (int y = 0; y < frame.getHeight(); y++) {
      frame.getRGB(0, y, row.length, 1, row, 0, row.length);
      for (int rgb : row) {
        int cell = cell(rgb);
        counts[0][cell]++;
        counts[1][cell] += rgb >> 16 & 255;
        counts[2][cell] += rgb >> 8 & 255;
        counts[3][cell] += rgb & 255;
      }
    }
  }

  /** Mean of a channel in a cell. */
  private double colour(int cell, int channel) {
    return (double) counts[channel + 1][cell] / counts[0][cell];
  }

  /** Sum of squared deviations; none within a single cell, which is not split. */
  private double all() {
    return cells.size() < 2 ? 0 : spread[0] + spread[1] + spread[2];
  }

  private List<ColourBox> split() {
    int widest = spread[0] > spread[1] ? 0 : 1;
    int channel = spread[2] > spread[widest] ? 2 : widest;
    List<Integer> low = new ArrayList<>();
    List<Integer> high = new ArrayList<>();
    for (int cell : cells) {
      (colour(cell, channel) < mean[channel] ? low : high).add(cell);
    }
    return List.of(new ColourBox(counts, low), new ColourBox(counts, high));
  }

  private int rgb() {
    int rgb = 0;
    for (int c = 0; c < CHANNELS; c++) {
      rgb = rgb << 8 | (int) Math.round(mean[c]);
    }
    return rgb;
  }
}
