package auricle.healing;

import auricle.equilibrium.TotalEnergy;
import auricle.numerics.NewtonIteration;
import auricle.numerics.NewtonMinimiser;
import auricle.numerics.NewtonMonitor;
import auricle.numerics.NewtonResult;
import auricle.numerics.NewtonSettings;
import java.util.ArrayList;
import java.util.List;

/**
 * Comes to rest from a start that is near it, as the start of a step in time is: few Hessians are
 * factorised, gradients alone lead on ({@link Pursuit}). Where that does not close in, or a Hessian
 * is not positive definite, all is taken back and Newton's method, which comes through anything,
 * does it instead.
 */
final class NearbyRest {
  private final TotalEnergy energy;
  private final NewtonMinimiser minimiser;
  private final Pursuit pursuit;

  NearbyRest(TotalEnergy energy, NewtonMinimiser minimiser) {
    this.energy = energy;
    this.minimiser = minimiser;
    pursuit = new Pursuit(energy, minimiser.point());
  }

  /** The method for the long way; what it leaves is not gone on from. */
  NewtonMinimiser minimiser() {
    pursuit.forget();
    return minimiser;
  }

  /** To be called when the energy has become another than that of the same body a little later. */
  void forget() {
    pursuit.forget();
  }

  /**
   * Comes to rest and leaves the energy there.
   *
   * @param x where rest is expected, length n; overwritten
   */
  NewtonResult find(double[] x, NewtonSettings settings, NewtonMonitor monitor) {
    double[] saved = energy.save();
    double[] start = x.clone();
    NewtonResult near = pursuit.run(x, settings, monitor);
    if (near != null) {
      return near;
    }
    energy.restore(saved);
    energy.settle(start);
    NewtonResult far = minimiser.minimise(start, settings, monitor);
    List<NewtonIteration> table = new ArrayList<>(pursuit.table());
    table.addAll(far.iterations());
    return new NewtonResult(
        far.outcome(),
        far.reason(),
        far.value(),
        far.residual(),
        far.tolerance(),
        far.negativePivots(),
        table);
  }
}
