package auricle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A mesh that a user brings, from the file to the result. */
class MeshFileModelTest {
  /** A strip of length 10, width 1, EI = 100; 0.3 N on its end lift it by 1 mm (beam theory). */
  private static final String MODEL =
      """
      format: auricle-model/1
      title: strip from a file
      mesh: {file: strip.obj}
      section: {thickness_mm: 0.1, young_mpa: 1.2e6, poisson: 0}
      supports:
        - clamp: {where: {plane: {point_mm: [0, 0, 0], normal: x}}}
      loads:
        - point_force: {where: {plane: {point_mm: [10, 0, 0], normal: x}}, total_n: [0, 0, 0.3]}
      solve: {linear: {}}
      probes:
        up: {displacement: {where: {nearest_mm: [10, 0, 0]}, direction: z}}
      """;

  @TempDir Path folder;

  private String errors = "";

  private int analyse(String model, String mesh) throws IOException {
    Files.writeString(folder.resolve("m.yaml"), model);
    Files.write(folder.resolve("strip.obj"), mesh.getBytes(StandardCharsets.ISO_8859_1));
    PrintStream usual = System.err;
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    System.setErr(new PrintStream(told, true, StandardCharsets.UTF_8));
    try {
      return Main.run("analyse", folder.resolve("m.yaml").toString(), "-q", "-o", folder + "/out");
    } finally {
      System.setErr(usual);
      errors = told.toString(StandardCharsets.UTF_8);
    }
  }

  private double lift() throws IOException {
    List<String> rows = Files.readAllLines(folder.resolve("out/probes.csv"));
    return Double.parseDouble(rows.get(1).split(",")[3]);
  }

  /** Quadrilaterals along x, in a unit of which one is so many mm. */
  private static String strip(int cells, double unit_mm) {
    StringBuilder s = new StringBuilder("# a strip of our own\ng all\n");
    for (int i = 0; i <= cells; i++) {
      for (int j = 0; j <= 1; j++) {
        s.append(
            String.format(Locale.ROOT, "v %.6f %.6f 0%n", 10.0 * i / cells / unit_mm, j / unit_mm));
      }
    }
    for (int i = 0; i < cells; i++) {
      int a = 2 * i + 1;
      s.append("f " + a + " " + (a + 2) + " " + (a + 3) + " " + (a + 1) + "\n");
    }
    return s.toString();
  }

  @Test
  void isSolvedAndTheCutQuadrilateralsAreTold() throws Exception {
    assertEquals(0, analyse(MODEL, strip(10, 1)), () -> errors);
    assertEquals(1, lift(), 0.01);
    String json = Files.readString(folder.resolve("out/result.json"));
    assertTrue(json.contains("10 quadrilaterals, cut in two each"), json);
  }

  @Test
  void isScaledAndRefined() throws Exception {
    String model = MODEL.replace("strip.obj}", "{path: strip.obj, scale: 1000, refinements: 2}}");
    assertEquals(0, analyse(model, strip(4, 1000)), () -> errors);
    assertEquals(1, lift(), 0.005);
    String json = Files.readString(folder.resolve("out/result.json"));
    assertTrue(json.replaceAll("\\s", "").contains("\"triangles\":128"), json);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "v 0 0 0 | strip.obj",
        "'' | 0 bytes",
        "v 0 0 0;v 1 0 0;v 0 1 NaN;f 1 2 3 | NaN",
        "v 0 0 0;v 1 0 0;v 0 1 0;f 1 2 4 | names vertex 4",
        "v 0 0 0;v 1 0 0;v 0 1 0;v 1 1 0;f 1 2 3;f 2 3 4 | oriented against each other",
        "v 0 0 0;v 1 0 0;v 0 1 0;v 1 1 0;v 0 0 1;f 1 2 3;f 2 1 4;f 1 2 5 | non-manifold",
        "v 0 0 0;v 1 0 0;v 2 0 0;f 1 2 3 | degenerate",
      })
  void aBadOneIsOneFindingAndLeavesNothing(String mesh, String word) throws Exception {
    assertEquals(2, analyse(MODEL, mesh.replace(";", "\n")));
    List<String> lines = errors.lines().toList();
    assertEquals(1, lines.size(), errors);
    assertTrue(lines.get(0).startsWith("error: strip.obj") && errors.contains(word), errors);
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(2, left.count());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "strip.obj} | none.obj} | no such file",
        "strip.obj} | .} | mesh file",
        "strip.obj} | 'a\\0.obj'} | file",
        "strip.obj} | {path: strip.obj, scale: 0}} | scale",
        "strip.obj} | {path: strip.obj, refinement: 1}} | refinements",
        "strip.obj} | {scale: 2}} | path",
        "strip.obj} | 3} | file",
      })
  void aSlipInTheModelIsOneFinding(String good, String bad, String word) throws Exception {
    assertEquals(2, analyse(MODEL.replace(good, bad.replace('\'', '"')), strip(4, 1)));
    assertEquals(1, errors.lines().count(), errors);
    assertTrue(errors.startsWith("error: ") && errors.contains(word), errors);
  }
}
