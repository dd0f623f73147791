package auricle.fitting;

import auricle.anatomy.Auricle;
import auricle.measurement.Measures;
import java.util.List;

/**
 * An ear with the measurements that were given.
 *
 * @param auricle its rest shape, as a mesh
 * @param measures everything that is measured on it at rest
 * @param residuals how well each given measurement is met
 */
public record FittedEar(Auricle auricle, Measures measures, List<FitResidual> residuals) {
  /** Keeps a copy. */
  public FittedEar {
    residuals = List.copyOf(residuals);
  }

  /** Whether every measurement is met. */
  public boolean met() {
    return residuals.stream().allMatch(FitResidual::met);
  }
}
