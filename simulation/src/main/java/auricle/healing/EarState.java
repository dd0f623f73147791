package auricle.healing;

import auricle.mesh.RestShape;
import java.util.Optional;

/**
 * A state of the shell: its unknowns, the frames of its directors, and the shape in which its wall
 * would be free of stress. Immutable.
 */
public final class EarState {
  private final double[] unknowns;
  private final double[] frames;
  private final Optional<RestShape> unstressed;

  /**
   * @param unknowns all unknowns, mm and rad
   * @param frames frames of the directors that belong to them
   * @param unstressed shape in which the wall carries nothing at this instant, after what has
   *     relaxed and been remodelled; kept as it is, of this state alone; empty where it was not
   *     asked for
   */
  public EarState(double[] unknowns, double[] frames, Optional<RestShape> unstressed) {
    this.unknowns = unknowns.clone();
    this.frames = frames.clone();
    this.unstressed = unstressed;
  }

  /** All unknowns; a copy. */
  public double[] unknowns() {
    return unknowns.clone();
  }

  /** Frames to restore the directors with; a copy. */
  public double[] frames() {
    return frames.clone();
  }

  /**
   * The shape in which the wall (without scar on it) would be free of stress at this instant; a
   * copy. Its stress is its instant stiffness times the strain from there; the strain from the
   * ear's rest shape to there is what it has relaxed and grown into. Empty where it was not asked
   * for.
   */
  public Optional<RestShape> unstressed() {
    return unstressed.map(RestShape::copy);
  }
}
