package auricle.surgery;

import auricle.equilibrium.TotalEnergy;
import auricle.numerics.DampedDescent;
import auricle.numerics.NewtonMinimiser;
import auricle.numerics.NewtonMonitor;
import auricle.numerics.NewtonResult;
import auricle.numerics.NewtonSettings;
import java.util.List;
import java.util.Locale;

/** The way of a body that has lost the shape it stood in, down to where it finds another. */
final class Snap {
  /** A way shorter than this share of the extent is nothing to speak of; as for load steps. */
  private static final double FAR = 0.02;

  private final TotalEnergy energy;
  private final NewtonMinimiser minimiser;
  private double farthest;

  Snap(TotalEnergy energy, NewtonMinimiser minimiser) {
    this.energy = energy;
    this.minimiser = minimiser;
  }

  /** Goes down under the energy as it is now. */
  NewtonResult go(NewtonSettings settings, NewtonMonitor monitor) {
    double[] before = energy.unknowns().clone();
    NewtonResult result = new DampedDescent(minimiser, settings, monitor).minimise(energy.free());
    farthest = farthest(before);
    return result;
  }

  /** How far it went, in words; none if that is next to nothing. */
  List<String> words(double share) {
    if (farthest <= FAR * energy.extent()) {
      return List.of();
    }
    return List.of(
        String.format(
            Locale.ROOT,
            "with %.1f %% of the step made, the shape that the ear stood in was lost: it snapped to another, up to %.1f mm away",
            100 * share,
            farthest));
  }

  private double farthest(double[] before) {
    double[] now = energy.unknowns();
    double most = 0;
    for (int i = 0; i < energy.supports().firstTilt(); i += 3) {
      double x = now[i] - before[i];
      double y = now[i + 1] - before[i + 1];
      double z = now[i + 2] - before[i + 2];
      most = Math.max(most, x * x + y * y + z * z);
    }
    return Math.sqrt(most);
  }
}
