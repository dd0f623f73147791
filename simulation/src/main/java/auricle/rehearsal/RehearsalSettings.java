package auricle.rehearsal;

import auricle.anatomy.MeshLevel;
import java.util.List;

/**
 * How a rehearsal is computed.
 *
 * @param mesh how finely the ear is sampled
 * @param springBack whether the time after the operation is computed too
 * @param times_days moments after the operation to report, days, ascending
 * @param samples tissues drawn from the spread of the tables for the band; 0 for none
 * @param seed of the draws
 * @param reactions whether to find what a little more of every dose would do
 */
public record RehearsalSettings(
    MeshLevel mesh,
    boolean springBack,
    List<Double> times_days,
    int samples,
    long seed,
    boolean reactions) {
  private static final List<Double> USUAL_TIMES = List.of(0.0, 1.0, 7.0, 30.0, 91.0, 182.0, 365.0);

  /** Keeps its own copy of the times. */
  public RehearsalSettings {
    times_days = List.copyOf(times_days);
  }

  /** Without reactions. */
  public RehearsalSettings(
      MeshLevel mesh, boolean springBack, List<Double> times_days, int samples, long seed) {
    this(mesh, springBack, times_days, samples, seed, false);
  }

  /** The operation alone, on the planning mesh. */
  public static RehearsalSettings tied() {
    return new RehearsalSettings(MeshLevel.PLANNING, false, USUAL_TIMES, 0, 1);
  }

  /** The operation and the year after it, on the planning mesh. */
  public static RehearsalSettings usual() {
    return new RehearsalSettings(MeshLevel.PLANNING, true, USUAL_TIMES, 0, 1);
  }

  /** The same on another mesh. */
  public RehearsalSettings withMesh(MeshLevel other) {
    return new RehearsalSettings(other, springBack, times_days, samples, seed, reactions);
  }

  /** The same with or without reactions. */
  public RehearsalSettings withReactions(boolean asked) {
    return new RehearsalSettings(mesh, springBack, times_days, samples, seed, asked);
  }
}
