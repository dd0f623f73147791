package auricle.viewer.scene;

import java.util.ArrayList;
import java.util.List;

/**
 * A flat drawing as data: drawn once, shown on the screen or written as SVG. x runs right, y down,
 * in pixels.
 */
public final class Sheet {
  /** What a mark stands for; themes give it a colour. */
  public enum Tone {
    /** Text and axes. */
    INK,
    /** Text of lesser weight. */
    FAINT,
    /** Lines to read against. */
    GRID,
    /** The paper. */
    PAPER,
    /** Before the operation. */
    BEFORE,
    /** The moment that is shown. */
    NOW,
    /** A year after. */
    YEAR,
    /** What is wanted. */
    TARGET,
    /** What needs a second look. */
    CAUTION,
    /** Upper level. */
    UPPER,
    /** Middle level. */
    MIDDLE,
    /** Lower level. */
    LOWER,
    /** Lobule. */
    LOBULE
  }

  /** Where a text is held. */
  public enum Hold {
    /** At its left end. */
    LEFT,
    /** At its middle. */
    MIDDLE,
    /** At its right end. */
    RIGHT
  }

  /** A point of the sheet. */
  public record Dot(double x, double y) {}

  /** A line through points. */
  public record Line(List<Dot> dots, Tone tone, double width, boolean dashed) {
    /** Keeps its own copy. */
    public Line {
      dots = List.copyOf(dots);
    }
  }

  /** A filled outline; opacity from 0 to 1. */
  public record Area(List<Dot> dots, Tone tone, double opacity) {
    /** Keeps its own copy. */
    public Area {
      dots = List.copyOf(dots);
    }
  }

  /** A line of text; y is its middle; size is a multiple of the usual. */
  public record Words(Dot at, String text, Tone tone, double size, boolean bold, Hold hold) {}

  private final double width;
  private final double height;
  private final List<Object> marks = new ArrayList<>();

  /** An empty sheet. */
  public Sheet(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** Width, pixels. */
  public double width() {
    return width;
  }

  /** Height, pixels. */
  public double height() {
    return height;
  }

  /** Everything on it, in the order in which it is drawn: lines, areas and words. */
  public List<Object> marks() {
    return List.copyOf(marks);
  }

  /** Draws a line through points. */
  public Sheet line(List<Dot> dots, Tone tone, double lineWidth, boolean dashed) {
    if (dots.size() > 1) {
      marks.add(new Line(dots, tone, lineWidth, dashed));
    }
    return this;
  }

  /** Draws a straight line. */
  public Sheet line(double x1, double y1, double x2, double y2, Tone tone, double lineWidth) {
    return line(List.of(new Dot(x1, y1), new Dot(x2, y2)), tone, lineWidth, false);
  }

  /** Fills an outline. */
  public Sheet area(List<Dot> dots, Tone tone, double opacity) {
    marks.add(new Area(dots, tone, opacity));
    return this;
  }

  /** Fills a rectangle. */
  public Sheet box(double x, double y, double w, double h, Tone tone, double opacity) {
    return area(
        List.of(new Dot(x, y), new Dot(x + w, y), new Dot(x + w, y + h), new Dot(x, y + h)),
        tone,
        opacity);
  }

  /** Fills a disc. */
  public Sheet disc(double x, double y, double radius, Tone tone) {
    List<Dot> dots = new ArrayList<>();
    for (int i = 0; i < 16; i++) {
      double a = 2 * Math.PI * i / 16;
      dots.add(new Dot(x + radius * Math.cos(a), y + radius * Math.sin(a)));
    }
    return area(dots, tone, 1);
  }

  /** Writes a text of the usual size. */
  public Sheet words(double x, double y, String text, Tone tone, Hold hold) {
    marks.add(new Words(new Dot(x, y), text, tone, 1, false, hold));
    return this;
  }

  /** Writes a text of any size. */
  public Sheet words(
      double x, double y, String text, Tone tone, double size, boolean bold, Hold hold) {
    marks.add(new Words(new Dot(x, y), text, tone, size, bold, hold));
    return this;
  }
}
