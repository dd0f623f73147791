package auricle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.material.MaterialTables;
import auricle.report.UseNotice;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class MaterialsCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir Path folder;

  private int run(String... arguments) {
    String[] all = new String[arguments.length + 1];
    all[0] = "materials";
    System.arraycopy(arguments, 0, all, 1, arguments.length);
    return Main.run(new PrintWriter(out), new PrintWriter(err), all);
  }

  private void own(String row) throws Exception {
    String header = "key,value,unit,source,locator,confidence\n";
    Files.writeString(folder.resolve("own.csv"), header + row + "\n");
  }

  @Test
  void everyRowIsListed() {
    assertEquals(0, run());
    MaterialTables.shipped()
        .rows()
        .forEach(row -> assertTrue(out.toString().contains("  " + row.key() + " "), row.key()));
    assertTrue(out.toString().contains(UseNotice.TEXT));
  }

  @Test
  void oneTableIsListedAlone() {
    assertEquals(0, run("--table", "age"));
    assertTrue(out.toString().startsWith("age\n"));
    assertTrue(!out.toString().contains("cartilage.poisson"), out.toString());
  }

  @Test
  void aRowIsExplained() {
    assertEquals(0, run("--explain", "cartilage.helix.modulus_mpa"));
    String text = out.toString();
    assertTrue(text.startsWith("cartilage.helix.modulus_mpa has no row of its own"), text);
    String change = "tissue: {cartilage.modulus_mpa: NUMBER}";
    for (String part : List.of("used by", "Zahnert", "derived: ", "septum_dynamic = ", change)) {
      assertTrue(text.contains(part), part + " in " + text);
    }
  }

  @Test
  void ownTablesGoBeforeOurs() throws Exception {
    own("cartilage.poisson,0.31,-,own measurement,none,seen");
    assertEquals(0, run("--tables", folder.toString(), "--explain", "cartilage.poisson"));
    assertTrue(out.toString().startsWith("cartilage.poisson = 0.31\n"), out.toString());
    assertTrue(out.toString().contains("in place of"), out.toString());
  }

  @Test
  void machinesGetTheSameRows() {
    assertEquals(0, run("--json"));
    JsonNode rows = new ObjectMapper().readTree(out.toString()).get("rows");
    assertEquals(MaterialTables.shipped().rows().size(), rows.size());
    rows.forEach(row -> assertTrue(!row.get("source").asString().isEmpty(), row.toString()));
  }

  @Test
  void slipsAreRefusedInWords() throws Exception {
    assertEquals(2, run("--table", "bite"));
    assertEquals(2, run("--explain", "cartilage.poison"));
    assertEquals(2, run("--explain", "knot_slack"));
    own("cartilage.poisson,0.31,-,,none,seen");
    assertEquals(2, run("--tables", folder.toString()));
    assertEquals("", out.toString());
    String text = err.toString();
    assertTrue(text.contains("--table: 'bite'; expected a table. Did you mean 'bites'?"), text);
    assertTrue(text.contains("Did you mean 'cartilage.poisson'?"), text);
    assertTrue(text.contains("Rows with it in their key: bite.knot_slack_mm."), text);
    assertTrue(text.contains("own.csv:2, column 4 'source': nothing"), text);
  }
}
