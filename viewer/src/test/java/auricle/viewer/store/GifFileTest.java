package auricle.viewer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An animation keeps the shades of its pictures, though it has 256 colours. */
class GifFileTest {
  private static final int SIZE = 192;
  private static final int BLOCK = 16;
  private static final int TILE = 8;
  private static final int BACKDROP = 0xe4e9e8;

  @TempDir private Path folder = Path.of(".");

  /** Skin that darkens to the right and reddens downwards: thousands of tones; a plain frame. */
  private static BufferedImage skin(int turn) {
    BufferedImage picture = new BufferedImage(SIZE, SIZE, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < SIZE; x++) {
      for (int y = 0; y < SIZE; y++) {
        double dark = (x + turn) / (SIZE + 40.0);
        double red = y / (double) SIZE;
        int r = (int) Math.round(240 - 110 * dark);
        int g = (int) Math.round(200 - 120 * dark - 25 * red);
        int b = (int) Math.round(175 - 110 * dark - 40 * red);
        boolean edge = Math.min(Math.min(x, y), Math.min(SIZE - 1 - x, SIZE - 1 - y)) < BLOCK;
        picture.setRGB(x, y, edge ? BACKDROP : r << 16 | g << 8 | b);
      }
    }
    return picture;
  }

  private List<BufferedImage> written(List<BufferedImage> frames) throws IOException {
    Path file = folder.resolve("turn.gif");
    GifFile.write(file, frames, 90);
    ImageReader reader = ImageIO.getImageReadersByFormatName("gif").next();
    List<BufferedImage> read = new ArrayList<>();
    try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
      reader.setInput(in);
      for (int i = 0; i < reader.getNumImages(true); i++) {
        read.add(reader.read(i));
      }
    }
    return read;
  }

  @Test
  void shadesDoNotBreakIntoBands() throws IOException {
    List<BufferedImage> frames = List.of(skin(0), skin(20), skin(40));
    List<BufferedImage> read = written(frames);
    assertEquals(frames.size(), read.size());
    for (int i = 0; i < frames.size(); i++) {
      for (int x = BLOCK; x < SIZE - BLOCK; x += BLOCK) {
        for (int y = BLOCK; y < SIZE - BLOCK; y += BLOCK) {
          for (int shift = 0; shift <= 16; shift += 8) {
            double wanted = mean(frames.get(i), x, y, shift, BLOCK);
            assertEquals(wanted, mean(read.get(i), x, y, shift, BLOCK), 2, i + ": " + x + ", " + y);
          }
        }
      }
    }
  }

  /** Tiles of one colour each, twice as many as a palette holds: most fall between its colours. */
  @Test
  void whatFallsBetweenTwoColoursIsDrawnWithBoth() throws IOException {
    BufferedImage tiles = new BufferedImage(SIZE, SIZE, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < SIZE; x++) {
      for (int y = 0; y < SIZE; y++) {
        int across = x / TILE * TILE;
        int down = y / TILE * TILE;
        tiles.setRGB(x, y, 50 + across << 16 | 40 + down << 8 | 60 + (across + down) / 4);
      }
    }
    BufferedImage read = written(List.of(tiles)).get(0);
    double square = 0;
    for (int x = 0; x < SIZE; x += TILE) {
      for (int y = 0; y < SIZE; y += TILE) {
        double off = mean(read, x, y, 16, TILE) - mean(tiles, x, y, 16, TILE);
        square += off * off * TILE * TILE / (SIZE * SIZE);
      }
    }
    // 3.3 with the nearest colour alone
    assertTrue(Math.sqrt(square) < 1.5, "off by " + Math.sqrt(square) + " of 255");
  }

  /** What the eye sees of a small area, 0 to 255. */
  private static double mean(BufferedImage picture, int x0, int y0, int shift, int size) {
    double sum = 0;
    for (int x = x0; x < x0 + size; x++) {
      for (int y = y0; y < y0 + size; y++) {
        sum += picture.getRGB(x, y) >> shift & 255;
      }
    }
    return sum / (size * size);
  }

  /** Otherwise a still part of a turning picture would crawl. */
  @Test
  void whatStaysTheSameIsDrawnTheSame() throws IOException {
    BufferedImage changed = skin(0);
    changed.createGraphics().fillRect(0, 0, SIZE / 4, SIZE / 4);
    List<BufferedImage> read = written(List.of(skin(0), changed));
    for (int x = SIZE / 4; x < SIZE; x++) {
      for (int y = 0; y < SIZE; y++) {
        assertEquals(read.get(0).getRGB(x, y), read.get(1).getRGB(x, y));
      }
    }
  }

  @Test
  void whatIsPlainStaysPlain() throws IOException {
    BufferedImage read = written(List.of(skin(0), skin(40))).get(1);
    for (int x = 0; x < SIZE; x++) {
      assertEquals(BACKDROP, read.getRGB(x, 3) & 0xffffff);
    }
  }

  @Test
  void fewColoursAreKeptAsTheyAre() throws IOException {
    BufferedImage two = new BufferedImage(9, 9, BufferedImage.TYPE_INT_RGB);
    two.setRGB(4, 4, 0x17607a);
    BufferedImage read = written(List.of(two)).get(0);
    assertEquals(0x17607a, read.getRGB(4, 4) & 0xffffff);
    assertEquals(0, read.getRGB(5, 4) & 0xffffff);
  }

  @Test
  void noPictureIsSaid() {
    IOException said = assertThrows(IOException.class, () -> written(List.of()));
    assertTrue(String.valueOf(said.getMessage()).contains("no picture"));
  }
}
