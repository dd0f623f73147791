package auricle.viewer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.viewer.scene.EarSurface;
import auricle.viewer.scene.Sheet;
import auricle.viewer.scene.Sheet.Hold;
import auricle.viewer.scene.Sheet.Tone;
import auricle.viewer.scene.StandInEar;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.SAXException;

/** What is kept and written. */
class StoreTest {
  @Test
  void unsavedWorkIsFoundAgainWithTheFileItBelongsTo(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("a scenario.yaml");
    new Recovery(folder).keep(Optional.of(file), "format: x\n");
    Recovery.Left left = new Recovery(folder).left().orElseThrow();
    assertEquals(Optional.of(file), left.belongsTo());
    assertEquals("format: x\n", left.text());
    new Recovery(folder).forget();
    assertTrue(new Recovery(folder).left().isEmpty());
  }

  @Test
  void settingsAndRecentFilesAreRemembered(@TempDir Path folder) throws IOException {
    Path one = Files.writeString(folder.resolve("one.yaml"), "");
    Path two = Files.writeString(folder.resolve("two.yaml"), "");
    Settings settings = new Settings(folder);
    settings.set("theme", "DARK");
    settings.opened(one);
    settings.opened(two);
    settings.opened(one);
    assertTrue(settings.save());
    Settings again = new Settings(folder);
    assertEquals("DARK", again.text("theme", "LIGHT"));
    assertEquals(List.of(one, two), again.recent());
  }

  @Test
  void damagedSettingsAreDoneWithout(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("viewer.properties"), "theme=\\u00zz");
    assertEquals("LIGHT", new Settings(folder).text("theme", "LIGHT"));
  }

  @Test
  void drawingsAndShapesAreWellFormed()
      throws ParserConfigurationException, IOException, SAXException {
    Sheet sheet =
        new Sheet(100, 50)
            .line(0, 0, 9, 9, Tone.NOW, 1)
            .words(5, 5, "a < b & c", Tone.INK, Hold.LEFT);
    String section = new SvgFile(t -> "#000000", 13).text(sheet, "Section", "no medical device");
    wellFormed(section);
    assertTrue(section.contains(">no medical device</text>"), section);
    EarSurface ear = StandInEar.of(0);
    wellFormed(ShapeFiles.vtu(ear, "ear -- no medical device"));
    assertTrue(ShapeFiles.vtu(ear, "no medical device").contains("<!-- no medical device -->"));
    assertEquals(84 + 50 * ear.triangleCount(), ShapeFiles.stl(ear).length);
    long faces = ShapeFiles.obj(ear, "ear").lines().filter(l -> l.startsWith("f ")).count();
    assertEquals(ear.triangleCount(), faces);
  }

  private static void wellFormed(String xml)
      throws ParserConfigurationException, IOException, SAXException {
    DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)));
  }
}
