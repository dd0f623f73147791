package auricle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Tables and JSON as text. */
class TextFilesTest {
  @Test
  void cellsWithCommasAndQuotesAreQuoted() {
    CsvText csv = new CsvText(List.of("a", "b"));
    csv.row(List.of("one, two", "he said \"three\""));
    assertEquals("a,b\r\n\"one, two\",\"he said \"\"three\"\"\"\r\n", csv.toString());
  }

  @Test
  void whatIsNoNumberIsAnEmptyCell() {
    CsvText csv = new CsvText(List.of("a", "b", "c"));
    csv.row(List.of(Double.NaN, 0.1, true));
    assertEquals("a,b,c\r\n,0.1,true\r\n", csv.toString());
  }

  @Test
  void aRowOfAnotherLengthIsRefused() {
    CsvText csv = new CsvText(List.of("a", "b"));
    assertThrows(IllegalArgumentException.class, () -> csv.row(List.of("only one")));
  }

  @Test
  void columnsOfATableStandUnderEachOther() {
    TextTable table = new TextTable("lrl");
    table.row("", "mm");
    table.row("upper", "10.5", "as wanted");
    assertEquals("           mm\n  upper  10.5  as wanted\n", table.text());
  }

  @Test
  void numbersAreShortAndHonest() {
    assertEquals("-", TextTable.number(Double.NaN, 1));
    assertEquals("0.0", TextTable.number(-0.01, 1));
    assertEquals("+0.1", TextTable.change(0.06, 1));
    assertEquals("0.0", TextTable.change(0.04, 1));
    assertEquals("85 to 107", TextTable.range(85, 107));
  }

  @Test
  void whatIsNoNumberIsNullInJson() {
    String json =
        JsonText.of(
            j -> {
              j.number("none", Double.NaN);
              j.numbers("some", List.of(1.5, Double.POSITIVE_INFINITY));
            });
    assertEquals("{\"none\":null,\"some\":[1.5,null]}", json.replaceAll("\\s", ""));
  }
}
