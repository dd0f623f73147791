package auricle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.assessment.Limit;
import auricle.assessment.Limits;
import org.junit.jupiter.api.Test;

class LimitNotesTest {
  private final Limits shipped = Limits.shipped();
  private final LimitNotes notes = new LimitNotes();

  @Test
  void aLimitKeepsItsNumberAndIsToldOnce() {
    Limit protruding = shipped.of("protruding");
    assertEquals("[1]", notes.mark(protruding));
    assertEquals("[2]", notes.mark(shipped.of("sharp_fold")));
    assertEquals("[1]", notes.mark(protruding));
    String text = notes.text();
    assertEquals(text.indexOf("[1]"), text.lastIndexOf("[1]"));
    assertTrue(text.contains("20 mm: Elements of Morphology"), text);
    assertTrue(text.contains("(read in the source)"), text);
  }

  @Test
  void noLineIsTooWideForATerminalAndNoWordIsLost() {
    for (Limit limit : shipped.all()) {
      notes.mark(limit);
    }
    String text = notes.text();
    text.lines().forEach(line -> assertTrue(line.length() <= 110, line));
    String joined = text.replaceAll("\\s+", " ");
    shipped.all().forEach(limit -> assertTrue(joined.contains(limit.source()), limit.key()));
  }

  @Test
  void aLimitWithoutAUnitIsAShareInPercentAsInWhatRefersToIt() {
    notes.mark(shipped.of("tear_strain_share"));
    assertTrue(notes.text().contains("80 %: convention of this project"), notes.text());
  }

  @Test
  void withoutAReferenceThereIsNothing() {
    assertEquals("", notes.text());
  }
}
