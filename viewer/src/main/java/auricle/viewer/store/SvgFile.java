package auricle.viewer.store;

import auricle.viewer.scene.Sheet;
import auricle.viewer.scene.Sheet.Area;
import auricle.viewer.scene.Sheet.Dot;
import auricle.viewer.scene.Sheet.Hold;
import auricle.viewer.scene.Sheet.Line;
import auricle.viewer.scene.Sheet.Tone;
import auricle.viewer.scene.Sheet.Words;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** A flat drawing as SVG 1.1. */
public final class SvgFile {
  /** Of the usual text. */
  private static final double NOTE_SIZE = 0.7;

  private final Function<Tone, String> colours;
  private final double em;

  /**
   * @param colours colour of a tone as #rrggbb
   * @param em height of usual text, pixels
   */
  public SvgFile(Function<Tone, String> colours, double em) {
    this.colours = colours;
    this.em = em;
  }

  /**
   * The file's text.
   *
   * @param note below the drawing, in small letters
   */
  public String text(Sheet sheet, String title, String note) {
    double height = sheet.height() + 2 * em;
    StringBuilder out = new StringBuilder();
    out.append(
        format(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.1f\" height=\"%.1f\" viewBox=\"0 0 %.1f %.1f\">%n",
            sheet.width(), height, sheet.width(), height));
    out.append("<title>").append(escaped(title)).append("</title>\n");
    out.append(
        "<rect width=\"100%\" height=\"100%\" fill=\"" + colours.apply(Tone.PAPER) + "\"/>\n");
    for (Object mark : sheet.marks()) {
      if (mark instanceof Line line) {
        out.append(line(line));
      } else if (mark instanceof Area area) {
        out.append(area(area));
      } else if (mark instanceof Words words) {
        out.append(words(words));
      }
    }
    Dot below = new Dot(sheet.width() / 2, height - em);
    out.append(words(new Words(below, note, Tone.FAINT, NOTE_SIZE, false, Hold.MIDDLE)));
    return out.append("</svg>\n").toString();
  }

  private String line(Line line) {
    return format(
        "<polyline fill=\"none\" stroke=\"%s\" stroke-width=\"%.2f\" stroke-linejoin=\"round\" stroke-linecap=\"%s\"%s points=\"%s\"/>%n",
        colours.apply(line.tone()),
        line.width(),
        line.dashed() ? "butt" : "round",
        line.dashed() ? " stroke-dasharray=\"4 3\"" : "",
        points(line.dots()));
  }

  private String area(Area area) {
    return format(
        "<polygon fill=\"%s\" fill-opacity=\"%.2f\" points=\"%s\"/>%n",
        colours.apply(area.tone()), area.opacity(), points(area.dots()));
  }

  private String words(Words w) {
    String anchor =
        switch (w.hold()) {
          case LEFT -> "start";
          case MIDDLE -> "middle";
          case RIGHT -> "end";
        };
    double size = em * w.size();
    return format(
        "<text x=\"%.1f\" y=\"%.1f\" font-family=\"sans-serif\" font-size=\"%.1f\" font-weight=\"%s\" text-anchor=\"%s\" fill=\"%s\">%s</text>%n",
        w.at().x(),
        w.at().y() + 0.35 * size,
        size,
        w.bold() ? "bold" : "normal",
        anchor,
        colours.apply(w.tone()),
        escaped(w.text()));
  }

  private static String points(List<Dot> dots) {
    StringBuilder text = new StringBuilder();
    dots.forEach(d -> text.append(format("%.2f,%.2f ", d.x(), d.y())));
    return text.toString().strip();
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
