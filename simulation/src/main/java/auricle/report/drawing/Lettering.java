package auricle.report.drawing;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Letters as outlines, from a font that the program carries (Liberation Sans, SIL Open Font
 * License), so that pictures are the same on every machine, also on one without any font. Widths
 * are those of the font, which Arial and Helvetica share.
 */
final class Lettering {
  private final TrueTypeFont font;
  private final CmapLookup letters;
  private final double unitsPerEm;

  private Lettering(String resource) {
    try (InputStream in =
        Lettering.class.getResourceAsStream("/auricle/report/fonts/" + resource)) {
      if (in == null) {
        throw new IllegalStateException("the font " + resource + " is missing");
      }
      this.font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
      this.letters = font.getUnicodeCmapLookup();
      this.unitsPerEm = font.getUnitsPerEm();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static final class Regular {
    static final Lettering FONT = new Lettering("LiberationSans-Regular.ttf");
  }

  private static final class Bold {
    static final Lettering FONT = new Lettering("LiberationSans-Bold.ttf");
  }

  private static Lettering of(Style style) {
    return style.bold() ? Bold.FONT : Regular.FONT;
  }

  /** Length of a text in mm. */
  static double width_mm(String text, Style style) {
    return of(style).width(text) * style.size_mm();
  }

  /** Outlines of a label at its place. */
  static Shape outline(Mark.Label label) {
    AffineTransform place = place(label);
    return place.createTransformedShape(of(label.style()).glyphs(label.text()));
  }

  /** Box around a label, from the descenders to the height of capitals with accents. */
  static Rectangle2D box(Mark.Label label) {
    double width = of(label.style()).width(label.text());
    Rectangle2D line = new Rectangle2D.Double(0, -0.8, width, 1.02);
    return place(label).createTransformedShape(line).getBounds2D();
  }

  private static AffineTransform place(Mark.Label label) {
    Style style = label.style();
    AffineTransform place = AffineTransform.getTranslateInstance(label.x(), label.y());
    if (style.turned()) {
      place.rotate(0, -1);
    }
    place.translate(-style.anchor().share() * width_mm(label.text(), style), 0);
    place.scale(style.size_mm(), style.size_mm());
    return place;
  }

  /** Length of a text of size 1. The font's reader keeps a position, hence one at a time. */
  private synchronized double width(String text) {
    try {
      double width = 0;
      for (int i = 0; i < text.length(); i++) {
        width += font.getAdvanceWidth(letters.getGlyphId(text.charAt(i)));
      }
      return width / unitsPerEm;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private synchronized Path2D glyphs(String text) {
    Path2D all = new Path2D.Double();
    double at = 0;
    try {
      for (int i = 0; i < text.length(); i++) {
        int glyph = letters.getGlyphId(text.charAt(i));
        GlyphData data = font.getGlyph().getGlyph(glyph);
        if (data != null) {
          double s = 1 / unitsPerEm;
          AffineTransform put = new AffineTransform(s, 0, 0, -s, at, 0);
          all.append(data.getPath().getPathIterator(put), false);
        }
        at += font.getAdvanceWidth(glyph) / unitsPerEm;
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return all;
  }

  /** Whether the font has all the letters of a text. */
  static boolean canWrite(String text, Style style) {
    return text.chars().allMatch(c -> of(style).letters.getGlyphId(c) != 0);
  }
}
