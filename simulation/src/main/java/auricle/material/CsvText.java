package auricle.material;

import java.io.IOException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/** The dialect of the tables: commas, quotes where needed, # before remarks, a header row. */
final class CsvText {
  private static final CSVFormat DIALECT =
      CSVFormat.DEFAULT
          .builder()
          .setCommentMarker('#')
          .setIgnoreEmptyLines(true)
          .setIgnoreSurroundingSpaces(true)
          .setTrim(true)
          .get();

  private CsvText() {}

  /** Records by the names of the header row. */
  static CSVParser records(String text) throws IOException {
    return CSVParser.parse(text, DIALECT.builder().setHeader().setSkipHeaderRecord(true).get());
  }

  /** All records, the header row as the first of them. */
  static CSVParser rows(String text) throws IOException {
    return CSVParser.parse(text, DIALECT);
  }
}
