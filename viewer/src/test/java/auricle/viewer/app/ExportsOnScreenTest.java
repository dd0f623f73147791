package auricle.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.viewer.view.Exports;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;

/** What is on the screen is written as files. */
class ExportsOnScreenTest extends OpenWindow {
  @Test
  void aScenarioIsOpenedSavedAndExported(FxRobot robot) throws Exception {
    Path file = folder.resolve("mine.yaml");
    Files.writeString(file, WorkedScenarios.text("lobule_unmasked.yaml"));
    robot.interact(() -> window.files().open(file));
    assertEquals(
        "The lobule unmasked by set-back, then controlled", models.desk().document().get().title());
    robot.interact(() -> models.steps().enable(0, false));
    robot.interact(() -> window.files().save());
    assertTrue(Files.readString(file).contains("enabled"));
    wait(() -> models.showing().moment().get().isPresent());
    Exports exports = window.exports();
    robot.interact(() -> write(exports));
    for (String name : new String[] {"ear.png", "section.svg", "ear.obj", "ear.stl", "ear.vtu"}) {
      assertTrue(Files.size(folder.resolve(name)) > 500, name);
    }
  }

  @Test
  void thePictureForPrintIsAsBrightAsTheScreen(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    wait(() -> state(robot).contains("At rest"));
    Thread.sleep(1500);
    byte[][] shown = new byte[1][];
    Path file = folder.resolve("print.png");
    robot.interact(
        () -> {
          try {
            shown[0] = Exports.png(window.bench().ear3d().snapshot(null, null));
            window.exports().picture(file);
          } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
          }
        });
    Files.createDirectories(PICTURES);
    Files.copy(
        file, PICTURES.resolve("print.png"), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    assertEquals(brightness(shown[0]), brightness(Files.readAllBytes(file)), 0.02);
    assertFalse(endsInOneGround(shown[0]), "on the screen the words stand above the ear alone");
    assertTrue(endsInOneGround(Files.readAllBytes(file)), "what the picture is for, below it");
  }

  /** Whether the lowest rows are of one colour from side to side, as below a line of words. */
  private static boolean endsInOneGround(byte[] png) throws IOException {
    var picture = javax.imageio.ImageIO.read(new java.io.ByteArrayInputStream(png));
    int y = picture.getHeight() - 4;
    return picture.getRGB(6, y) == picture.getRGB(picture.getWidth() - 6, y);
  }

  /** Mean of all colours, 0 to 1. */
  private static double brightness(byte[] png) throws IOException {
    var picture = javax.imageio.ImageIO.read(new java.io.ByteArrayInputStream(png));
    double sum = 0;
    int count = 0;
    for (int x = 0; x < picture.getWidth(); x += 3) {
      for (int y = 0; y < picture.getHeight(); y += 3) {
        int c = picture.getRGB(x, y);
        sum += ((c >> 16 & 255) + (c >> 8 & 255) + (c & 255)) / 765.0;
        count++;
      }
    }
    return sum / count;
  }

  private void write(Exports exports) {
    try {
      exports.picture(folder.resolve("ear.png"));
      exports.section(folder.resolve("section.svg"));
      exports.shape(folder.resolve("ear.obj"));
      exports.shape(folder.resolve("ear.stl"));
      exports.shape(folder.resolve("ear.vtu"));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void turntableAndCourseAreExportedAsRunsOfPictures(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    wait(() -> models.showing().result().get().map(r -> !r.times().isEmpty()).orElse(false));
    Path gif = folder.resolve("turn.gif");
    robot.interact(() -> window.exports().animation().turntable(gif, 1080, w -> {}));
    wait(120, () -> Files.exists(gif));
    int course = models.showing().result().get().orElseThrow().course().size();
    robot.interact(
        () -> window.exports().animation().course(folder.resolve("step.png"), 540, w -> {}));
    Path last = folder.resolve(String.format("step-%02d.png", course));
    wait(() -> Files.exists(last));
    assertEquals(540, javax.imageio.ImageIO.read(last.toFile()).getHeight(), 1);
    var reader = javax.imageio.ImageIO.getImageReadersByFormatName("gif").next();
    try (var in = javax.imageio.ImageIO.createImageInputStream(gif.toFile())) {
      reader.setInput(in);
      assertEquals(36, reader.getNumImages(true));
      assertEquals(1080, reader.getHeight(0), 1);
      keepFrame(reader.read(0));
    }
  }

  private static void keepFrame(java.awt.image.BufferedImage frame) throws IOException {
    Files.createDirectories(PICTURES);
    javax.imageio.ImageIO.write(frame, "png", PICTURES.resolve("turntable.png").toFile());
  }
}
