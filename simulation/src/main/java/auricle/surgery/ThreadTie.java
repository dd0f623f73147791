package auricle.surgery;

import auricle.energy.ThreadLaw;
import auricle.equilibrium.TotalEnergy;

/** A thread that is tied to a rest length, or pulled to a tension. */
final class ThreadTie implements RestFinder.Change {
  private final TotalEnergy energy;
  private final RestFinder finder;
  private final BodyThread thread;
  private final boolean pulled;
  private final double from;
  private final double to;
  private final ThreadLaw before;

  private ThreadTie(
      TotalEnergy energy,
      RestFinder finder,
      BodyThread thread,
      boolean pulled,
      double from,
      double to) {
    this.energy = energy;
    this.finder = finder;
    this.thread = thread;
    this.pulled = pulled;
    this.from = from;
    this.to = to;
    before = thread.thread().law();
  }

  /**
   * Ties a thread to a rest length.
   *
   * @param finder knows the energy at the present state
   * @param from_mm rest length at which the thread begins to do something
   */
  static ThreadTie toLength(
      TotalEnergy energy, RestFinder finder, BodyThread thread, double from_mm, double to_mm) {
    return new ThreadTie(energy, finder, thread, false, from_mm, to_mm);
  }

  /** Pulls a thread from one tension to another, N. */
  static ThreadTie toTension(
      TotalEnergy energy, RestFinder finder, BodyThread thread, double from_n, double to_n) {
    return new ThreadTie(energy, finder, thread, true, from_n, to_n);
  }

  private double at(double share) {
    return from + share * (to - from);
  }

  @Override
  public double[] motion(double share) {
    Tightening here = new Tightening(energy, finder.point(), thread);
    return pulled ? here.toTension(at(share)) : here.toLength(at(share));
  }

  @Override
  public void put(double share) {
    energy.setLoadFactor(1);
    if (share == 0) {
      thread.follow(before);
    } else if (pulled) {
      thread.thread().follow(new ThreadLaw.ConstantPull(at(share)));
    } else {
      thread.thread().tieToLength(at(share));
    }
  }

  @Override
  public void end() {
    energy.setLoadFactor(1);
    if (!pulled) {
      thread.thread().tieToLength(to);
    }
  }
}
