package auricle.material;

import java.util.List;

/** The section of every triangle and the direction of its first axis. */
public interface SectionField {
  /**
   * Whether there is anything of it at a triangle; nothing else may be asked where there is not.
   */
  default boolean covers(int triangle) {
    return true;
  }

  /** Section of a triangle. */
  Section section(int triangle);

  /**
   * Section against what of the curvature varies within a triangle, less its mean: another where
   * what shut under the mean has no say in the rest.
   */
  default Section varying(int triangle) {
    return section(triangle);
  }

  /**
   * Angle from the triangle's own axis (edge 0, corner 1 to corner 2) to the section's first axis,
   * anticlockwise about the normal, rad.
   */
  double angle(int triangle);

  /**
   * Whether strain is continuous from a triangle to its neighbour, so that it may be smoothed over
   * their common edge; where the section jumps (a groove, a seam) it is not.
   */
  default boolean joined(int triangle, int neighbour) {
    return section(triangle).equals(section(neighbour));
  }

  /** What a triangle has against bending beyond a curvature, besides its section. */
  default List<BendingStop> stops(int triangle) {
    return List.of();
  }

  /** One section everywhere whose axes do not matter. */
  static SectionField uniform(Section section) {
    return new SectionField() {
      @Override
      public Section section(int triangle) {
        return section;
      }

      @Override
      public double angle(int triangle) {
        return 0;
      }
    };
  }
}
