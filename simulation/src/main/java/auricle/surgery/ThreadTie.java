package auricle.surgery;

import auricle.energy.ThreadLaw;
import auricle.equilibrium.TotalEnergy;
import java.util.function.Function;

/** A thread that is tied to a rest length, or pulled to a tension. */
final class ThreadTie implements RestFinder.Change {
  private final TotalEnergy energy;
  private final Function<BodyThread, Tightening> tightening;
  private final BodyThread thread;
  private final boolean pulled;
  private final double from;
  private final double to;
  private final ThreadLaw before;

  /**
   * @param tightening at the present state
   * @param pulled whether from and to are tensions, N; else they are rest lengths, mm
   * @param from where the thread begins to do something
   */
  ThreadTie(
      TotalEnergy energy,
      Function<BodyThread, Tightening> tightening,
      BodyThread thread,
      boolean pulled,
      double from,
      double to) {
    this.energy = energy;
    this.tightening = tightening;
    this.thread = thread;
    this.pulled = pulled;
    this.from = from;
    this.to = to;
    before = thread.thread().law();
  }

  private double at(double share) {
    return from + share * (to - from);
  }

  @Override
  public double[] motion(double share) {
    Tightening here = tightening.apply(thread);
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
