package auricle.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReferenceTableTest {
  static List<String> shippedTables() throws IOException, URISyntaxException {
    URL folder = Objects.requireNonNull(ReferenceTable.class.getResource("tables"));
    try (Stream<Path> files = Files.list(Path.of(folder.toURI()))) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("shippedTables")
  void everyShippedTableStatesItsProvenance(String fileName) {
    ReferenceTable table = ReferenceTable.read(fileName);
    assertFalse(table.provenance().get(0).isBlank());
    assertTrue(table.rows() > 0);
  }

  @Test
  void columnsAreFoundByName() {
    ReferenceTable table =
        ReferenceTable.parse("t", "# source: made up\n# unit: mm\nload, u\n0, 0\n\n0.5, 2.5e-1\n");
    assertEquals(List.of("source: made up", "unit: mm"), table.provenance());
    assertEquals(List.of("load", "u"), table.columns());
    assertEquals(0.25, table.column("u")[1]);
    assertEquals("0.5", table.text(1, "load"));
  }

  @Test
  void anEmptyCellHasNoValue() {
    double[] u = ReferenceTable.parse("t", "# s\nload,u\n0,\n1,nan\n").column("u");
    assertTrue(Double.isNaN(u[0]) && Double.isNaN(u[1]));
  }

  @ParameterizedTest
  @ValueSource(strings = {"load,u\n1,2\n", "# s\nload,u\n", "# s\nu,u\n1,2\n", "# s\nload,u\n1\n"})
  void aTableThatIsNotOneIsRefused(String text) {
    assertThrows(IllegalArgumentException.class, () -> ReferenceTable.parse("t", text));
  }

  @Test
  void anUnknownTableColumnOrNumberIsRefused() {
    ReferenceTable table = ReferenceTable.parse("t", "# s\nload,u\n1,much\n");
    assertThrows(IllegalArgumentException.class, () -> ReferenceTable.read("none.csv"));
    assertThrows(IllegalArgumentException.class, () -> table.column("v"));
    assertThrows(IllegalArgumentException.class, () -> table.column("u"));
  }
}
