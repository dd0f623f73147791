package auricle.rehearsal;

import auricle.anatomy.Auricle;
import auricle.diagnostics.BadInputException;
import auricle.material.MaterialTables;
import auricle.material.PressFit;
import auricle.material.Tissue;
import auricle.plan.EarCase;
import auricle.plan.PressTest;
import auricle.surgery.RimPress;
import java.util.Optional;

/** The tissue of an ear from what was chosen for it, and from a press at the bedside. */
final class EarTissue {
  private EarTissue() {}

  /**
   * @throws BadInputException if a row or an override is not in the tables, or the press cannot be
   *     met
   */
  static Tissue of(EarCase ear, Auricle auricle, MaterialTables tables) throws BadInputException {
    Tissue tissue = Tissue.of(tables, ear.tissue().keys(ear.ear()));
    Optional<PressTest> press = ear.tissue().press();
    return press.isPresent() ? pressed(press.get(), auricle, tissue) : tissue;
  }

  private static Tissue pressed(PressTest press, Auricle auricle, Tissue tissue)
      throws BadInputException {
    PressFit fit =
        PressFit.of(
            tissue,
            press.depth_mm(),
            press.force_n(),
            t -> RimPress.force_n(auricle, t, press.level_percent(), press.depth_mm()));
    if (!fit.met()) {
      throw new BadInputException(fit.findings());
    }
    return fit.tissue();
  }
}
