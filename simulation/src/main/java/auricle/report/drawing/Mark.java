package auricle.report.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;

/** One thing drawn on a page; lengths in mm, x to the right, y down. */
public sealed interface Mark {
  /** Draws it, in mm. */
  void draw(Graphics2D g);

  /**
   * A line.
   *
   * @param path its course
   * @param pen how it is drawn
   */
  record Line(Shape path, Pen pen) implements Mark {
    @Override
    public void draw(Graphics2D g) {
      g.setColor(pen.ink().awt());
      g.setStroke(pen.stroke());
      g.draw(path);
    }
  }

  /**
   * A filled area.
   *
   * @param shape its outline; filled where its winding number is not zero
   * @param ink its colour
   */
  record Area(Shape shape, Ink ink) implements Mark {
    @Override
    public void draw(Graphics2D g) {
      g.setColor(ink.awt());
      g.fill(shape);
    }
  }

  /**
   * A raster, smooth between its dots.
   *
   * @param image what it shows; may be clear in places
   * @param x of its left edge
   * @param y of its upper edge
   * @param dot_mm size of a dot
   */
  record Raster(BufferedImage image, double x, double y, double dot_mm) implements Mark {
    @Override
    public void draw(Graphics2D g) {
      AffineTransform place = AffineTransform.getTranslateInstance(x, y);
      place.scale(dot_mm, dot_mm);
      g.drawImage(image, place, null);
    }
  }

  /**
   * A label of one line.
   *
   * @param text what it says
   * @param x of its anchor
   * @param y of its base line at the anchor
   * @param style its lettering
   */
  record Label(String text, double x, double y, Style style) implements Mark {
    /** Width of the white around letters that have it, in sizes of the letters. */
    static final double HALO = 0.28;

    @Override
    public void draw(Graphics2D g) {
      Shape outline = Lettering.outline(this);
      if (style.haloed()) {
        g.setColor(Ink.WHITE.awt());
        float width = (float) (HALO * style.size_mm());
        g.setStroke(new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(outline);
      }
      g.setColor(style.ink().awt());
      g.fill(outline);
    }
  }
}
