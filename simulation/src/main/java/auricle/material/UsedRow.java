package auricle.material;

/**
 * A row that an ear's tissue rests on, and the number that took part.
 *
 * @param row the row of the tables
 * @param value number used, in the row's unit
 * @param origin where the number is from
 */
public record UsedRow(MaterialRow row, double value, Origin origin) {

  /** Where a number is from. */
  public enum Origin {
    /** The row itself. */
    TABLE("table"),
    /** Given for this ear in the row's place. */
    OVERRIDE("given for this ear"),
    /** Drawn from the row's spread. */
    SAMPLE("drawn from the spread");

    private final String words;

    Origin(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }
}
