package auricle.healing;

import auricle.equilibrium.LoadPath;
import auricle.equilibrium.LoadSteps;
import auricle.equilibrium.StepMonitor;
import auricle.equilibrium.TotalEnergy;
import auricle.numerics.Outcome;
import java.util.List;
import java.util.Optional;

/**
 * What the ear would do if all threads were cut at a time: its rest an hour later, when what
 * relaxes within minutes has come to terms with the new shape and nothing has healed. The history
 * goes on as if it had not been asked.
 */
final class ReleaseTest {
  /** How long after the cut the shape is taken, s; our own convention. */
  private static final double WAIT_S = 3600;

  private final TotalEnergy energy;
  private final NearbyRest rest;
  private final List<TimePart> parts;
  private final List<SlippingThread> threads;
  private final TimeStepSettings settings;
  private double[] lastReleased = new double[0];

  ReleaseTest(
      TotalEnergy energy,
      NearbyRest rest,
      List<TimePart> parts,
      List<SlippingThread> threads,
      TimeStepSettings settings) {
    this.energy = energy;
    this.rest = rest;
    this.parts = parts;
    this.threads = threads;
    this.settings = settings;
  }

  /**
   * The unknowns without threads, the coordinates of which are the shape; none if no rest was found
   * or the caller asked to stop.
   */
  Optional<double[]> at(double time_s, TimeMonitor monitor) {
    double[] saved = energy.save();
    boolean found =
        near(time_s, monitor) || (monitor.proceed(time_s) && far(saved, time_s, monitor));
    Optional<double[]> released = found ? Optional.of(energy.unknowns().clone()) : Optional.empty();
    lastReleased = found ? energy.save() : lastReleased;
    aim(time_s, 0);
    energy.restore(saved);
    rest.forget();
    return released;
  }

  /** From the shape released before, if there is one. */
  private boolean near(double time_s, TimeMonitor monitor) {
    if (lastReleased.length == 0) {
      return false;
    }
    energy.restore(lastReleased);
    return rest(time_s, monitor);
  }

  /** From the tied shape, the threads let out at the instant. */
  private boolean far(double[] saved, double time_s, TimeMonitor monitor) {
    energy.restore(saved);
    aim(time_s, 0);
    threads.forEach(SlippingThread::cut);
    energy.setLoadFactor(0);
    StepMonitor watch = (factor, line) -> monitor.proceed(time_s);
    LoadPath path = new LoadSteps(energy, rest.minimiser(), settings.leading(), watch).run(1);
    return path.outcome() == Outcome.CONVERGED && rest(time_s, monitor);
  }

  /** From where it is to the rest without threads after the wait. */
  private boolean rest(double time_s, TimeMonitor monitor) {
    aim(time_s, WAIT_S);
    threads.forEach(SlippingThread::cut);
    energy.setLoadFactor(1);
    rest.forget();
    return rest.find(energy.free(), settings.newton(), line -> monitor.proceed(time_s)).converged();
  }

  private void aim(double time_s, double wait_s) {
    parts.forEach(part -> part.aim(time_s, time_s + wait_s));
  }
}
