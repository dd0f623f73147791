package auricle.healing;

/** A state of the shell: its unknowns and the frames of its directors. Immutable. */
public final class EarState {
  private final double[] unknowns;
  private final double[] frames;

  public EarState(double[] unknowns, double[] frames) {
    this.unknowns = unknowns.clone();
    this.frames = frames.clone();
  }

  /** All unknowns; a copy. */
  public double[] unknowns() {
    return unknowns.clone();
  }

  /** Frames to restore the directors with; a copy. */
  public double[] frames() {
    return frames.clone();
  }
}
