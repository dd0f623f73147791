package auricle.analysis;

/** Where the first material axis points, at every place of a surface. */
public sealed interface MaterialAxis {
  /** A fixed direction, laid into the surface by taking off what is normal to it. */
  record Along(String at, Triple direction) implements MaterialAxis {}

  /** Around an axis: axis × (x − point), laid into the surface. */
  record Around(String at, Triple point, Triple axis) implements MaterialAxis {}
}
