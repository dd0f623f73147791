package auricle.viewer.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PictureRunTest {
  private static BufferedImage picture(int index) {
    return new BufferedImage(1 + index, 1, BufferedImage.TYPE_INT_RGB);
  }

  private static List<String> told(PictureRun run) {
    while (run.drawNext()) {
      assertFalse(Thread.interrupted());
    }
    return run.keep();
  }

  @Test
  void everyPictureIsDrawnOnceAndKeptInOrder() {
    List<Integer> widths = new ArrayList<>();
    PictureRun run =
        new PictureRun(
            3, PictureRunTest::picture, all -> all.forEach(p -> widths.add(p.getWidth())));
    assertEquals(List.of(), told(run));
    assertEquals(List.of(1, 2, 3), widths);
  }

  @Test
  void aFileThatCannotBeWrittenIsToldInASentence() {
    PictureRun run =
        new PictureRun(
            1,
            PictureRunTest::picture,
            all -> {
              throw new IOException("the disk is full");
            });
    assertEquals(List.of("Cannot write the animation: the disk is full."), told(run));
  }

  @Test
  void anErrorWhileKeepingIsTold() {
    PictureRun run =
        new PictureRun(
            1,
            PictureRunTest::picture,
            all -> {
              throw new IllegalStateException("no colours");
            });
    String only = told(run).get(0);
    assertTrue(only.startsWith("Cannot write the animation: "), only);
    assertTrue(only.endsWith("no colours."), only);
  }

  @Test
  void anErrorWhileDrawingEndsTheRunAndIsTold() {
    List<Integer> asked = new ArrayList<>();
    PictureRun run =
        new PictureRun(
            5,
            i -> {
              asked.add(i);
              if (i == 2) {
                throw new IllegalArgumentException("no height");
              }
              return picture(i);
            },
            all -> {
              throw new AssertionError("half a run is not kept");
            });
    String only = told(run).get(0);
    assertEquals(List.of(0, 1, 2), asked);
    assertTrue(only.contains("no height"), only);
    assertFalse(run.drawNext());
  }

  @Test
  void picturesTooLargeForTheMemorySaySo() {
    PictureRun run =
        new PictureRun(
            1,
            i -> {
              throw new OutOfMemoryError("heap");
            },
            all -> {});
    assertEquals(
        List.of(
            "Cannot write the animation: there is not enough memory for pictures of this size; choose a smaller height."),
        told(run));
  }
}
