package auricle.rehearsal;

import auricle.diagnostics.BadInputException;
import auricle.material.MaterialTables;
import auricle.material.Tissue;
import auricle.material.TissueKeys;
import auricle.plan.EarCase;
import java.util.OptionalDouble;

/** The tissue of an ear from what was chosen for it. */
final class EarTissue {
  private EarTissue() {}

  /**
   * @throws BadInputException if a row or an override is not in the tables
   */
  static Tissue of(EarCase ear, MaterialTables tables) throws BadInputException {
    return Tissue.of(
        tables,
        new TissueKeys(
            ear.tissue().rows(),
            ear.tissue().overrides(),
            ear.ear().age_years(),
            OptionalDouble.of(ear.ear().cartilageThickness_mm())));
  }
}
