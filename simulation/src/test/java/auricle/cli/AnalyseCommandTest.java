package auricle.cli;

import static auricle.modelfile.SmallModels.strip;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class AnalyseCommandTest {
  private static final String GOOD =
      strip(
          """
          supports:
            - clamp: {where: start}
          loads:
            - line_force: {where: end, force_n_per_mm: [0, 0, 4]}
          solve: {load_steps: {count: 2}}
          probes:
            up: {displacement: {where: end, direction: z}}
          """);

  private static final String EXPECTED =
      "expected:\n"
          + "  - {probe: up, value: 6.7, tolerance: {relative: 0.05}, source: elastica,"
          + " confidence: computed}\n";

  @TempDir Path folder;

  private int analyse(String text, String... more) throws IOException {
    Path model = Files.writeString(folder.resolve("m.yaml"), text);
    String[] usual = {"analyse", model.toString(), "--out", folder.resolve("out").toString()};
    return run(Stream.concat(Stream.of(usual), Stream.of(more)).toArray(String[]::new));
  }

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    return Main.run(new PrintWriter(out), new PrintWriter(err), arguments);
  }

  private String result(String name) throws IOException {
    return Files.readString(folder.resolve("out").resolve(name));
  }

  /** Everything in the folder of the test but the model. */
  private List<String> left() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).filter(f -> !f.equals("m.yaml")).toList();
    }
  }

  @Test
  void aGoodModelEndsWithZeroAndAllFiles() throws Exception {
    assertEquals(0, analyse(GOOD + EXPECTED));
    assertEquals(List.of("out"), left());
    List<String> rows = result("probes.csv").lines().toList();
    assertEquals("step,load_factor,converged,up_mm", rows.get(0));
    assertEquals(3, rows.size());
    assertTrue(rows.get(2).startsWith("2,1.0,true,6."));
    assertTrue(result("steps.pvd").contains("steps/step_0002.vtu"));
    assertTrue(result("timing.json").contains("solve_ms"));
  }

  @Test
  void theResultFollowsItsSchemaAndSaysWhatItIsFor() throws Exception {
    analyse(GOOD + EXPECTED);
    String json = result("result.json");
    assertTrue(json.contains("Not a medical device"));
    try (InputStream in = Main.class.getResourceAsStream("/auricle/report/result-1.schema.json")) {
      String schema = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      var registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
      assertEquals(
          List.of(), registry.getSchema(schema, InputFormat.JSON).validate(json, InputFormat.JSON));
    }
  }

  @Test
  void theSameInputGivesTheSameBytes() throws Exception {
    analyse(GOOD);
    byte[] json = Files.readAllBytes(folder.resolve("out/result.json"));
    byte[] vtu = Files.readAllBytes(folder.resolve("out/steps/step_0002.vtu"));
    analyse(GOOD);
    assertArrayEquals(json, Files.readAllBytes(folder.resolve("out/result.json")));
    assertArrayEquals(vtu, Files.readAllBytes(folder.resolve("out/steps/step_0002.vtu")));
  }

  @Test
  void anExpectationThatIsNotMetEndsWithOne() throws Exception {
    assertEquals(1, analyse(GOOD + EXPECTED.replace("6.7", "5.7")));
    assertTrue(result("result.json").contains("\"met\" : false"));
  }

  @Test
  void badInputEndsWithTwoAndLeavesNothing() throws Exception {
    assertEquals(2, analyse(GOOD.replace("clamp", "clmap")));
    assertTrue(err.toString().startsWith("error: m.yaml line 6 column 5"), err::toString);
    assertEquals(2, analyse(GOOD.replace("where: start", "where: strat")));
    assertEquals(2, analyse(""));
    assertEquals(2, run("analyse", folder.resolve("no.yaml").toString(), "-o", "x"));
    assertEquals(2, run("analyse"));
    assertEquals(2, run("analyse", "--nonsense"));
    assertEquals(List.of(), left());
  }

  @Test
  void badInputLeavesOlderResultsAlone() throws Exception {
    analyse(GOOD);
    byte[] before = Files.readAllBytes(folder.resolve("out/result.json"));
    assertEquals(2, analyse(GOOD.replace("where: start", "where: strat")));
    assertArrayEquals(before, Files.readAllBytes(folder.resolve("out/result.json")));
  }

  @Test
  void aSecondRunReplacesTheFirstAndLeavesStrangersAlone() throws Exception {
    analyse(GOOD.replace("count: 2", "count: 4"));
    Files.writeString(folder.resolve("out/mine.txt"), "mine");
    assertEquals(0, analyse(GOOD));
    assertFalse(Files.exists(folder.resolve("out/steps/step_0004.vtu")));
    assertTrue(Files.exists(folder.resolve("out/mine.txt")));
    assertEquals(List.of("out"), left());
  }

  @Test
  void noEquilibriumEndsWithThreeAndSaysSoEverywhere() throws Exception {
    String hard = GOOD.replace("{count: 2}", "{factors: [1, 1.0e9], most_iterations: 3}");
    assertEquals(3, analyse(hard));
    assertTrue(result("result.json").contains("\"converged\" : false"));
    List<String> rows = result("probes.csv").lines().toList();
    assertTrue(rows.get(rows.size() - 1).endsWith("false,"), rows::toString);
  }

  @Test
  void aFileInThePlaceOfTheFolderIsBadInput() throws Exception {
    Files.writeString(folder.resolve("out"), "a file");
    assertEquals(2, analyse(GOOD));
    assertEquals("a file", Files.readString(folder.resolve("out")));
  }

  @Test
  void fieldFilesAreWellFormedAndCountRight() throws Exception {
    analyse(GOOD);
    Document vtu =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(folder.resolve("out/steps/step_0001.vtu").toFile());
    Element piece = (Element) vtu.getElementsByTagName("Piece").item(0);
    assertEquals("22", piece.getAttribute("NumberOfPoints"));
    assertEquals("20", piece.getAttribute("NumberOfCells"));
    NodeList arrays = vtu.getElementsByTagName("DataArray");
    for (int i = 0; i < arrays.getLength(); i++) {
      String data = arrays.item(i).getTextContent().strip();
      assertTrue(java.util.Base64.getDecoder().decode(data).length > 8);
    }
  }

  private static final String MESH_MODEL =
      GOOD.replace("{strip: {length_mm: 10, width_mm: 1, divisions: [10, 1]}}", "{file: m.obj}")
          .replace("where: start", "where: {plane: {point_mm: [0, 0, 0], normal: x}}")
          .replace("where: end", "where: {plane: {point_mm: [2, 0, 0], normal: x}}")
          .replace("[0, 0, 4]", "[0, 0, 0.1]");

  private static final String MESH =
      "v 0 0 0\nv 1 0 0\nv 2 0 0\nv 0 1 0\nv 1 1 0\nv 2 1 0\n"
          + "f 1 2 5\nf 1 5 4\nf 2 3 6\nf 2 6 5\n";

  @Test
  void aMeshFileIsReadFromBesideTheModelAndHashed() throws Exception {
    Files.writeString(folder.resolve("m.obj"), MESH);
    assertEquals(0, analyse(MESH_MODEL));
    assertTrue(result("result.json").contains("\"mesh_file\" : \"m.obj\""));
    assertTrue(result("result.json").contains("\"mesh_sha256\""));
  }

  @Test
  void badMeshFilesEndWithTwo() throws Exception {
    assertEquals(2, analyse(MESH_MODEL));
    for (String bad : List.of("", MESH.replace("v 1 0 0", "v nan 0 0"), MESH + "f 1 5 4\n")) {
      Files.writeString(folder.resolve("m.obj"), bad);
      assertEquals(2, analyse(MESH_MODEL), bad);
    }
    assertEquals(List.of("m.obj"), left());
  }

  @Test
  void helpSaysWhatItIsFor() {
    assertEquals(0, run("analyse", "--help"));
    assertEquals(0, run("--help"));
    assertEquals(0, run("--version"));
    String all = out.toString().replaceAll("\\s+", " ");
    assertEquals(4, all.split("Not a medical device", -1).length);
  }
}
