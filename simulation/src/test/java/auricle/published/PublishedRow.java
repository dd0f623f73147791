package auricle.published;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * What others found, with what is accepted: a row of {@code operations.csv}.
 *
 * @param key name of the row
 * @param low least value accepted
 * @param high greatest value accepted
 * @param source where it is from
 * @param confidence how sure it is
 */
record PublishedRow(String key, double low, double high, String source, String confidence) {
  static PublishedRow of(String key) {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    try (Reader in =
        new InputStreamReader(
            Objects.requireNonNull(PublishedRow.class.getResourceAsStream("operations.csv")),
            StandardCharsets.UTF_8)) {
      for (CSVRecord r : format.parse(in)) {
        if (r.get("key").equals(key)) {
          return new PublishedRow(
              key,
              Double.parseDouble(r.get("low")),
              Double.parseDouble(r.get("high")),
              r.get("source"),
              r.get("confidence"));
        }
      }
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    throw new IllegalArgumentException("no row " + key);
  }

  boolean holds(double value) {
    return value >= low && value <= high;
  }

  double middle() {
    return (low + high) / 2;
  }

  /** What is said when a value does not hold. */
  String words(double value) {
    return "%s is %.4g; %.4g to %.4g accepted, after %s (%s)"
        .formatted(key, value, low, high, source, confidence);
  }
}
