package auricle.analysis;

/** A probe made ready for one mesh: its number at a state. */
@FunctionalInterface
interface Reading {
  /** The number, in the unit of the probe; no number where there is none. */
  double of(ShellView view);
}
