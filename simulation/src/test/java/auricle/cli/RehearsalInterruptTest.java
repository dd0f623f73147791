package auricle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run that is ended from outside. */
class RehearsalInterruptTest {
  private static final String SCENARIO =
      """
      format: auricle-scenario/1
      title: To be ended early, invented
      ear: {age_years: 30}
      plan:
        - fold_suture: {name: upper suture, level_percent: 78, tie: {gap_mm: 5.5}}
        - fold_suture: {name: lower suture, level_percent: 62, tie: {gap_mm: 6}}
      """;

  @Test
  void leavesNothingBehind(@TempDir Path folder) throws Exception {
    Path file = Files.writeString(folder.resolve("s.yaml"), SCENARIO);
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                "auricle.cli.Main",
                "rehearse",
                file.toString(),
                "--mesh",
                "fine",
                "--out",
                folder.resolve("out").toString())
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    try (BufferedReader told =
        new BufferedReader(
            new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8))) {
      String line = told.readLine();
      while (line != null && !line.contains("suture")) {
        line = told.readLine();
      }
      // by its handle: Process.destroy would close the stream that is still read
      process.toHandle().destroy();
      while (line != null) {
        line = told.readLine();
      }
    }
    assertTrue(process.waitFor(60, TimeUnit.SECONDS));
    assertNotEquals(0, process.exitValue());
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(List.of("s.yaml"), left.map(p -> p.getFileName().toString()).toList());
    }
  }
}
