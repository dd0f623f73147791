package auricle.rehearsal;

import auricle.diagnostics.BadInputException;
import auricle.material.MaterialTables;
import auricle.material.Tissue;
import auricle.plan.EarCase;

/** The tissue of an ear from what was chosen for it. */
final class EarTissue {
  private EarTissue() {}

  /**
   * @throws BadInputException if a row or an override is not in the tables
   */
  static Tissue of(EarCase ear, MaterialTables tables) throws BadInputException {
    return Tissue.of(tables, ear.tissue().keys(ear.ear()));
  }
}
