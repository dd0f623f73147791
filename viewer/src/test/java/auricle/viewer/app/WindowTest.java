package auricle.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.viewer.scene.ClinicalView;
import auricle.viewer.store.Recovery;
import auricle.viewer.store.Settings;
import auricle.viewer.view.Exports;
import auricle.viewer.viewmodel.Aim;
import auricle.viewer.viewmodel.Models;
import auricle.viewer.viewmodel.StandInRehearser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.geometry.Point2D;
import javafx.geometry.Point3D;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/**
 * The window from end to end, on a stand-in solver: open, drag, turn, step, undo, export, recover.
 */
@ExtendWith({NeedsDisplay.class, ApplicationExtension.class})
@SuppressWarnings("NullAway.Init") // the window opens when the toolkit has started
class WindowTest {
  private static final Path PICTURES = Path.of("target", "screens");

  private Path folder = Path.of("");
  private Window window;
  private Models models;

  @Start
  void start(Stage stage) throws IOException {
    folder = Files.createTempDirectory("auricle-window");
    window =
        new Window(stage, folder, new Beginning(new StandInRehearser()), StandInRehearser::new);
    models = window.models();
    window.open(Optional.empty());
    stage.setWidth(1280);
    stage.setHeight(800);
  }

  @AfterEach
  void close() {
    WaitForAsyncUtils.waitForFxEvents();
    window.close();
  }

  @Test
  void theFirstStartSaysWhatItIsForAndShowsAnEarAtRest(FxRobot robot) throws Exception {
    wait(() -> robot.lookup("#state").tryQuery().isPresent() && state(robot).contains("At rest"));
    assertTrue(robot.lookup("#welcome").tryQuery().isPresent());
    assertTrue(text(robot, "#use-line").contains("Not a medical device"));
    picture(robot, "first-start");
    robot.clickOn("#welcome-close");
    assertFalse(robot.lookup("#welcome").tryQuery().isPresent());
  }

  @Test
  void aBiteThatIsDraggedMovesAndCanBePutBack(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    robot.interact(() -> models.steps().choose("upper suture"));
    robot.interact(() -> window.bench().view(ClinicalView.BACK));
    Thread.sleep(1500);
    Node ball = ball(robot);
    double before = level();
    Point2D from = onScreen(ball);
    robot.drag(from, MouseButton.PRIMARY).moveBy(0, 14).moveBy(0, 10).drop();
    wait(() -> level() != before);
    picture(robot, "bite-dragged");
    robot.clickOn("#undo");
    wait(() -> level() == before);
  }

  private Node ball(FxRobot robot) throws TimeoutException {
    wait(() -> window.bench().ball("scapha_upper_level_percent").isPresent());
    WaitForAsyncUtils.waitForFxEvents();
    return window.bench().ball("scapha_upper_level_percent").orElseThrow();
  }

  private static Point2D onScreen(Node ball) {
    Point3D inScene = ball.localToScene(Point3D.ZERO, true);
    var stage = ball.getScene();
    return stage.getRoot().localToScreen(inScene.getX(), inScene.getY());
  }

  private double level() {
    return models.steps().operation().orElseThrow().dose("scapha_upper_level_percent").value();
  }

  @Test
  void aDoseIsTypedAndUndoneByKey(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    robot.interact(() -> models.steps().choose("upper suture"));
    robot.doubleClickOn("#dose-gap_mm .text-field");
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write("7.5").push(KeyCode.ENTER);
    wait(() -> gap() == 7.5);
    robot.interact(() -> window.bench().ear3d().requestFocus());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    wait(() -> gap() != 7.5);
  }

  private double gap() {
    return models.steps().operation().orElseThrow().dose("gap_mm").value();
  }

  @Test
  void timeIsSteppedAndTheFrameSaysWhere(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    wait(() -> models.showing().result().get().map(r -> !r.times().isEmpty()).orElse(false));
    robot.clickOn("#moment-on");
    wait(() -> state(robot).contains("1 day after the operation"));
    robot.interact(() -> window.bench().openTab("Course"));
    picture(robot, "course");
  }

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
    wait(() -> Files.exists(gif));
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

  @Test
  void theBandIsAskedForAndDrawn(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    wait(() -> state(robot).contains("At rest"));
    robot.interact(() -> window.bench().openTab("Course"));
    robot.clickOn("#work-band");
    wait(() -> models.showing().result().get().map(r -> !r.bands().isEmpty()).orElse(false));
    picture(robot, "band");
  }

  @Test
  void aMeasurementThatCannotBeIsSaidBesideItsFieldAndUndone(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    robot.interact(() -> window.bench().openTab("Ear"));
    robot.doubleClickOn("#field-height_mm .text-field");
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write("630").push(KeyCode.ENTER);
    wait(() -> measuredHeight() == 630);
    wait(() -> !findings(robot, "height_mm").isEmpty());
    picture(robot, "ear-height-impossible");
    robot.interact(() -> models.desk().undo());
    wait(() -> findings(robot, "height_mm").isEmpty());
  }

  private double measuredHeight() {
    return models.desk().document().get().ear().ear().height_mm();
  }

  private static java.util.List<Node> findings(FxRobot robot, String field) {
    return robot.lookup("#findings-" + field).queryAs(javafx.scene.layout.VBox.class).getChildren();
  }

  @Test
  void theTargetIsChangedOnTheScreen(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    robot.interact(() -> window.bench().openTab("Target"));
    robot.doubleClickOn("#field-helix_mastoid_upper_mm-from .text-field");
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write("9").push(KeyCode.ENTER);
    wait(() -> Aim.UPPER.of(models.desk().document().get().ear().target()).low() == 9);
    picture(robot, "target");
  }

  @Test
  void bothEarsAreJudgedFromTheFront(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    robot.interact(
        () -> window.files().openText("pair", WorkedScenarios.text("two_ears_that_differ.yaml")));
    robot.interact(() -> window.bench().openTab("Both ears"));
    wait(() -> models.other().result().get().isPresent());
    picture(robot, "both-ears");
    robot.interact(() -> window.bench().openTab("Balance"));
  }

  @Test
  void aFileThatCannotBeReadIsToldAndTheDeskStays(FxRobot robot) throws Exception {
    Path file =
        Files.writeString(folder.resolve("bad.yaml"), "format: auricle-scenario/1\nere: 1\n");
    String before = models.desk().document().get().title();
    robot.interact(() -> window.files().open(file));
    assertEquals(before, models.desk().document().get().title());
    assertTrue(window.files().messages().toString().contains("bad.yaml"));
    assertTrue(robot.lookup("#messages").query().isVisible());
  }

  @Test
  void aScenarioIsDraggedOntoTheWindow(FxRobot robot) throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("dragged.yaml"), WorkedScenarios.text("lobule_unmasked.yaml"));
    robot.interact(() -> DraggedFiles.drop(file, window.bench().getScene()));
    assertEquals(Optional.of(file), window.files().file().get());
    assertTrue(models.desk().document().get().title().contains("lobule"));
  }

  @Test
  void aBadFileDraggedOntoTheWindowIsToldInSentencesAndTheDeskStays(FxRobot robot)
      throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("dragged_bad.yaml"), "format: auricle-scenario/1\nere: 1\n");
    String before = models.desk().document().get().title();
    robot.interact(() -> DraggedFiles.drop(file, window.bench().getScene()));
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(before, models.desk().document().get().title());
    assertTrue(robot.lookup("#messages").query().isVisible());
    assertTrue(window.files().messages().get(0).contains("dragged_bad.yaml"));
    assertTrue(window.files().messages().toString().contains("line 2"));
    picture(robot, "bad-file-dragged");
  }

  @Test
  void aLessonIsDraggedOntoTheWindow(FxRobot robot) throws Exception {
    Files.writeString(folder.resolve("plain.yaml"), WorkedScenarios.text("lobule_unmasked.yaml"));
    Path file =
        Files.writeString(
            folder.resolve("lesson.yaml"),
            """
            format: auricle-lesson/1
            title: A lesson of one page
            scenario: plain.yaml
            pages:
              - show: before
                view: front
                text: Look at the lobule.
            """);
    robot.interact(() -> DraggedFiles.drop(file, window.bench().getScene()));
    assertEquals("Lessons", window.bench().openTab());
    assertTrue(robot.lookup("#lesson-end").tryQuery().isPresent());
  }

  @Test
  void theOtherEarIsAddedAndTakenOutOnTheScreen(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    robot.interact(() -> window.bench().openTab("Ear"));
    robot.clickOn("#side-left");
    assertTrue(models.desk().document().get().left());
    robot.clickOn("#other-ear");
    assertEquals(2, models.desk().document().get().scenario().ears().size());
    wait(() -> state(robot).contains("At rest"));
    picture(robot, "ear-of-a-pair");
    robot.clickOn("#other-ear");
    assertEquals(1, models.desk().document().get().scenario().ears().size());
    assertTrue(models.desk().document().get().left());
  }

  @Test
  void unsavedWorkIsThereAgainAfterAKill(FxRobot robot) throws Exception {
    robot.interact(() -> models.steps().enable(0, false));
    robot.interact(() -> window.files().keep());
    Recovery.Left left = new Recovery(folder).left().orElseThrow();
    robot.interact(() -> models.desk().undo());
    assertNotEquals(0, models.steps().plan().get().enabled().size());
    robot.interact(() -> window.files().recover(left));
    assertFalse(models.steps().plan().get().operations().get(0).enabled());
    assertTrue(models.desk().unsaved().get());
  }

  @Test
  void panesAndTextComeBackAsTheUserSetThemAndElseFollowTheScreen(FxRobot robot) {
    Stage stage = (Stage) window.bench().getScene().getWindow();
    Settings settings = new Settings(folder);
    Memory memory = new Memory(stage, settings, models.look(), window.bench());
    robot.interact(memory::recall);
    robot.interact(() -> window.bench().sidePanes(23, 32, stage.getWidth()));
    robot.interact(memory::keep);
    Settings kept = new Settings(folder);
    assertEquals(23, kept.number("pane.left.em", 0), 0.5);
    assertEquals(32, kept.number("pane.right.em", 0), 0.5);
    assertEquals("", kept.text("text.scale", ""), "never set by hand");
    robot.interact(() -> models.look().textScale().set(1.2));
    robot.interact(memory::keep);
    assertEquals(1.2, new Settings(folder).number("text.scale", 0));
  }

  @Test
  void aLessonAsksBeforeItShows(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    robot.interact(() -> window.bench().openTab("Lessons"));
    robot.clickOn("#lesson-coupling").clickOn("#lesson-next").clickOn("#lesson-next");
    assertTrue(robot.lookup("#lesson-next").queryButton().isDisabled());
    robot.clickOn("#answer-3");
    wait(() -> !robot.lookup("#lesson-next").queryButton().isDisabled());
    assertEquals("upper suture", models.showing().moment().get().orElseThrow().label());
    picture(robot, "lesson");
  }

  private static String state(FxRobot robot) {
    return String.valueOf(robot.lookup("#state").query().getAccessibleText());
  }

  private static String text(FxRobot robot, String query) {
    return ((Labeled) robot.lookup(query + " .label").query()).getText();
  }

  private static void wait(BooleanSupplier met) throws TimeoutException {
    WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, met::getAsBoolean);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void picture(FxRobot robot, String name) throws IOException {
    Files.createDirectories(PICTURES);
    byte[][] png = new byte[1][];
    robot.interact(
        () -> {
          try {
            png[0] = Exports.png(window.bench().getScene().snapshot(null));
          } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
          }
        });
    Files.write(PICTURES.resolve(name + ".png"), png[0]);
  }
}
