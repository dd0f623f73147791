package auricle.report.drawing;

/**
 * Lettering of a label.
 *
 * @param size_mm height of the em square
 * @param bold whether it is bold
 * @param ink its colour
 * @param anchor which end stands at the place
 * @param turned whether it reads upwards, turned by a quarter anticlockwise
 * @param haloed whether paper shows around the letters, so that they can be read over lines
 */
public record Style(
    double size_mm, boolean bold, Ink ink, Anchor anchor, boolean turned, boolean haloed) {

  /** Which part of a label stands at its place. */
  public enum Anchor {
    /** The first letter. */
    START,
    /** The middle. */
    MIDDLE,
    /** The end. */
    END;

    /** Share of the length that lies before the place. */
    double share() {
      return ordinal() / 2.0;
    }

    /** The word of SVG for it. */
    String svg() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** Plain black lettering that begins at its place. */
  public static Style of(double size_mm) {
    return new Style(size_mm, false, Ink.BLACK, Anchor.START, false, false);
  }

  /** The same in bold. */
  public Style inBold() {
    return new Style(size_mm, true, ink, anchor, turned, haloed);
  }

  /** The same in another colour. */
  public Style in(Ink other) {
    return new Style(size_mm, bold, other, anchor, turned, haloed);
  }

  /** The same about the middle. */
  public Style centred() {
    return new Style(size_mm, bold, ink, Anchor.MIDDLE, turned, haloed);
  }

  /** The same, ending at its place. */
  public Style ending() {
    return new Style(size_mm, bold, ink, Anchor.END, turned, haloed);
  }

  /** The same, reading upwards. */
  public Style upwards() {
    return new Style(size_mm, bold, ink, anchor, true, haloed);
  }

  /** The same with paper around the letters. */
  public Style overLines() {
    return new Style(size_mm, bold, ink, anchor, turned, true);
  }
}
