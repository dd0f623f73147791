package auricle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {
  private static final String GOOD =
      """
      format: auricle-scenario/1
      ear: {}
      plan:
        - fold_suture: {level_percent: 75, tie: {gap_mm: 6}}
      """;

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int check(String... arguments) {
    String[] all = new String[arguments.length + 1];
    all[0] = "check";
    System.arraycopy(arguments, 0, all, 1, arguments.length);
    return Main.run(new PrintWriter(out), new PrintWriter(err), all);
  }

  private String file(String name, String text) throws Exception {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  @Test
  void aGoodScenarioEndsWithZero() throws Exception {
    assertEquals(0, check(file("s.yaml", GOOD)));
    assertTrue(out.toString().contains("1 ear, 1 step, no errors, no warnings."), out.toString());
    assertEquals("", err.toString());
  }

  @Test
  void warningsAreToldAndDoNotStop() throws Exception {
    assertEquals(0, check(file("s.yaml", GOOD.replaceFirst("- fold.*", "- skin_strip: {}"))));
    assertTrue(err.toString().startsWith("warning: s.yaml line 3 column 1, plan: a skin strip"));
    assertTrue(out.toString().contains("no errors, 1 warning."), out.toString());
  }

  @Test
  void allFilesAreCheckedAndOneBadOneEndsWithTwo() throws Exception {
    String bad = file("bad.yaml", GOOD.replace("gap_mm: 6", "gap_mm: 0").replace("75", "175"));
    assertEquals(2, check(bad, file("s.yaml", GOOD), folder.resolve("none.yaml").toString()));
    assertEquals(3, err.toString().lines().filter(l -> l.startsWith("error: ")).count());
    assertTrue(err.toString().contains("error: bad.yaml line 4 column"), err.toString());
    assertEquals(2, out.toString().lines().filter(l -> l.contains("cannot be used")).count());
    assertTrue(out.toString().contains("s.yaml: 1 ear"), out.toString());
  }

  @Test
  void measurementsThatDoNotHoldTogetherAreTold() throws Exception {
    String ear = "ear: {helix_mastoid_upper_mm: 8, helix_mastoid_middle_mm: 30}";
    assertEquals(2, check(file("s.yaml", GOOD.replace("ear: {}", ear))));
    assertTrue(err.toString().startsWith("error: s.yaml line 2 column "), err.toString());
    assertTrue(out.toString().contains("cannot be used"), out.toString());
  }

  @Test
  void bitesOffTheScaphaAreTold() throws Exception {
    String far = GOOD.replace("level_percent: 75", "level_percent: 75, scapha_from_fold_mm: 20");
    assertEquals(0, check(file("s.yaml", far)));
    assertTrue(err.toString().contains("off the scapha"), err.toString());
  }

  @Test
  void theSchemaIsPrintedForEditors() {
    assertEquals(0, check("--schema"));
    assertTrue(out.toString().contains("auricle-scenario/1"));
    assertEquals(2, check());
  }
}
