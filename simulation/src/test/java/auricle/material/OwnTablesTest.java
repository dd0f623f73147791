package auricle.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.BadInputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A user's own tables: what they may do, and how they are refused. */
class OwnTablesTest {
  private static final String HEADER = "key,value,unit,source,locator,confidence\n";

  @TempDir Path folder;

  private MaterialTables load(String... lines) throws IOException, BadInputException {
    Files.writeString(folder.resolve("mine.csv"), HEADER + String.join("\n", lines));
    return MaterialTables.load(List.of(folder));
  }

  private List<String> refused(String... lines) {
    return assertThrows(BadInputException.class, () -> load(lines)).findings().stream()
        .map(f -> f.line().replace(folder + "/", ""))
        .toList();
  }

  private String refusal() {
    return String.valueOf(
        assertThrows(BadInputException.class, () -> MaterialTables.load(List.of(folder)))
            .getMessage());
  }

  @Test
  void aRowTakesThePlaceOfOursAndOursIsRemembered() throws Exception {
    MaterialTables tables = load("cartilage.poisson,0.3,-,own measurement,page 1,seen");
    assertEquals(0.3, tables.row("cartilage.poisson").orElseThrow().value());
    List<MaterialRow> under = tables.shadowed("cartilage.poisson");
    assertEquals(
        MaterialTables.shipped().row("cartilage.poisson").orElseThrow().value(),
        under.get(0).value());
    assertEquals(0.3, Tissue.of(tables, TissueKeys.standard(40)).poisson());
  }

  @Test
  void rowsMayBeAdded() throws Exception {
    MaterialTables tables =
        load(
            "thread.silk.modulus_mpa,5000,MPa,own measurement,page 1,seen",
            "cartilage.scapha.modulus_mpa,2,MPa,own measurement,page 1,seen",
            "cartilage.modulus_mpa@mine,2.5,MPa,own measurement,page 2,seen");
    Tissue tissue = Tissue.of(tables, TissueKeys.standard(40));
    assertTrue(tissue.thread("silk_3_0").isPresent());
    double scale = tables.row("section.stiffness_scale").orElseThrow().value();
    assertEquals(2 * scale, tissue.layers("scapha").core().modulus_mpa(), 1e-12);
    Tissue chosen =
        Tissue.of(tables, TissueKeys.standard(40).withRow("cartilage.modulus_mpa", "mine"));
    assertEquals(2.5 * scale, chosen.layers("scapha").core().modulus_mpa(), 1e-12);
    assertEquals(2.5 * scale, chosen.layers("floor").core().modulus_mpa(), 1e-12);
  }

  @Test
  void aNumberWithoutASourceIsRefused() {
    List<String> findings = refused("cartilage.poisson,0.3,-,,page 1,seen");
    assertEquals(
        List.of(
            "mine.csv:2, column 4 'source': nothing; expected who says so: author, year, journal;"
                + " or 'choice of this project'. A number without a source is not used; say where"
                + " it comes from."),
        findings);
  }

  @Test
  void everythingWrongIsToldAtOnce() {
    List<String> findings =
        refused(
            "cartilage.modulus_mpa,3000,kPa,own,page 1,sean",
            "cartilage.scafa.modulus_mpa,3,MPa,own,page 1,seen",
            "cartilage.poisson,\"0,3\",-,own,,seen",
            "bite.knot_slack_mm,0.1,mm,own,page 1,seen",
            "bite.knot_slack_mm,0.2,mm,own,page 1,seen");
    String all = String.join("\n", findings);
    assertEquals(7, findings.size(), all);
    assertTrue(all.contains("mine.csv:2, column 3 'unit': 'kPa'; expected 'MPa'"), all);
    assertTrue(all.contains("mine.csv:2, column 2 'value': 3000 kPa; expected a number from"), all);
    assertTrue(all.contains("'sean'; expected one of seen, 2nd"), all);
    assertTrue(all.contains("Did you mean 'cartilage.scapha.modulus_mpa'?"), all);
    assertTrue(all.contains("Write a point in the place of the comma."), all);
    assertTrue(all.contains("mine.csv:4, column 5 'locator': nothing"), all);
    assertTrue(all.contains("a second row 'bite.knot_slack_mm', after"), all);
  }

  @Test
  void aSpreadHasToHoldTogether() throws IOException {
    Files.writeString(
        folder.resolve("mine.csv"),
        """
        key,value,unit,distribution,sd,low,high,source,locator,confidence
        cartilage.poisson,0.3,-,uniform,,0.35,0.4,own,none,seen
        cartilage.thickness_mm,1.2,mm,normal,,,,own,none,seen
        cartilage.modulus_mpa,3,MPa,gaussian,,,,own,none,seen
        bite.knot_slack_mm,0.1,mm,normal,-1,,,own,none,seen
        """);
    String all = refusal();
    assertTrue(all.contains("0.35 … 0.4 about the value 0.3"), all);
    assertTrue(all.contains("column 5 'sd': nothing; expected a number"), all);
    assertTrue(all.contains("'gaussian'; expected one of none, normal"), all);
    assertTrue(all.contains("-1; expected a standard deviation above 0"), all);
  }

  /** A column that is not there is told of once, not at every row; what else is wrong is told. */
  @Test
  void aColumnThatIsMissingIsToldOfOnce() throws IOException {
    Files.writeString(
        folder.resolve("mine.csv"),
        """
        key,value,unit,source,confidence
        cartilage.poisson,0.3,-,own,seen
        bite.knot_slack_mm,abc,mm,own,certain
        """);
    assertEquals(
        List.of(
            "mine.csv:1: no column locator; expected key, value, unit, source, locator, confidence"
                + " in every table. Add it to the header row; its rows are not used without it.",
            "mine.csv:3, column 2 'value': 'abc'; expected a number, with a point before decimals",
            "mine.csv:3, column 5 'confidence': 'certain'; expected one of seen, 2nd, memory,"
                + " derived, practice, calibrated, assumed"),
        refusal().lines().map(line -> line.substring(line.indexOf("mine.csv"))).toList());
  }

  @Test
  void aTableThatIsNoneIsRefused() throws IOException {
    Files.writeString(folder.resolve("a.csv"), "# only a remark\n");
    Files.writeString(folder.resolve("b.csv"), "key,value,units\ncartilage.poisson,0.3,-\n");
    Files.writeString(folder.resolve("c.csv"), HEADER + "\"cartilage.poisson,0.3\n");
    Files.write(folder.resolve("d.csv"), "ä".getBytes(StandardCharsets.ISO_8859_1));
    String all = refusal();
    assertTrue(all.contains("a.csv: no header row"), all);
    assertTrue(
        all.contains("a column 'units'; expected a known column. Did you mean 'unit'?"), all);
    assertTrue(all.contains("no column unit, source, locator, confidence"), all);
    assertTrue(all.contains("c.csv: it cannot be read as CSV"), all);
    assertTrue(all.contains("d.csv: it cannot be read"), all);
    Path none = folder.resolve("none");
    assertThrows(BadInputException.class, () -> MaterialTables.load(List.of(none)));
  }

  @Test
  void rowsMayBePastedFromASpreadsheet() throws Exception {
    String text = "\uFEFF" + HEADER + "cartilage.poisson , 0.3 , - ,\"own, here\",none,seen\r\n";
    Files.writeString(folder.resolve("mine.csv"), text);
    MaterialTables tables = MaterialTables.load(List.of(folder));
    assertEquals("own, here", tables.row("cartilage.poisson").orElseThrow().source());
  }
}
