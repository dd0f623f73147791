package auricle.rehearsal;

import auricle.anatomy.Auricle;
import auricle.anatomy.EarMeasurements;
import auricle.anatomy.MeshLevel;
import auricle.diagnostics.BadInputException;
import auricle.fitting.EarFitter;

/** An auricle from measurements. */
final class EarShape {
  private EarShape() {}

  /**
   * The auricle that has all of the measurements.
   *
   * @throws BadInputException if no auricle has them together
   */
  static Auricle of(EarMeasurements ear, MeshLevel mesh) throws BadInputException {
    return EarFitter.fit(ear, mesh, "/ear").auricle();
  }
}
