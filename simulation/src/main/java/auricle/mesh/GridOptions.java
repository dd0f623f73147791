package auricle.mesh;

/**
 * How a parametric surface is cut into triangles.
 *
 * @param first cells along s
 * @param second cells along t
 * @param pattern how cells become triangles
 * @param jitter random shift of vertices as a fraction of a cell, 0 … 0.45, half of it with even
 *     rows; those on a boundary slide along it, corners stay
 * @param seed of the shift
 */
public record GridOptions(int first, int second, Pattern pattern, double jitter, long seed) {
  /** How cells become triangles. */
  public enum Pattern {
    /** All diagonals the same way. */
    ONE_WAY,
    /** Diagonals alternate. */
    ALTERNATING,
    /** Four triangles about a vertex in the middle of every cell. */
    CROSSED,
    /**
     * Every row has as many cells as its length asks for, the longest {@link GridOptions#first}:
     * even triangles on discs and domes, and around a point.
     */
    EVEN_ROWS,
    /**
     * Delaunay triangulation of the shifted points: no line of edges runs through. Around a point
     * the rows begin even.
     */
    UNALIGNED
  }

  /** Checks the numbers. */
  public GridOptions {
    if (first < 1 || second < 1 || !(jitter >= 0 && jitter <= 0.45)) {
      throw new IllegalArgumentException(
          "divisions of at least 1 and a jitter of 0 to 0.45 are needed");
    }
  }

  /** Whether short rows get fewer cells than long ones. */
  boolean thinsShortRows(ParametricSurface surface) {
    return pattern == Pattern.EVEN_ROWS
        || (pattern == Pattern.UNALIGNED && (surface.pointAtLow() || surface.pointAtHigh()));
  }

  /** Largest shift in cells; rows of different cells bear half as much without turning over. */
  double shift() {
    return pattern == Pattern.EVEN_ROWS ? jitter / 2 : jitter;
  }

  /** A regular grid of alternating diagonals. */
  public static GridOptions regular(int first, int second) {
    return new GridOptions(first, second, Pattern.ALTERNATING, 0, 1);
  }
}
