package auricle.healing;

import auricle.energy.ShellLayer;
import auricle.mesh.RestShape;

/** A layer of a {@link Sheet} that changes with time: {@link TimePart} in the sheet's shapes. */
interface SheetLayer {
  /** The elastic layer that it is at the end of a step; always the same object. */
  ShellLayer elastic();

  /**
   * Sets the elastic layer for a step.
   *
   * @param from_s present time, s since the start
   * @param to_s end of the step, s
   * @param present shape of the sheet at the present
   */
  void aim(double from_s, double to_s, RestShape present);

  /**
   * Takes its own variables to the end of the step aimed at.
   *
   * @param present shape of the sheet at the start of the step
   * @param next shape at its end
   */
  void arrive(RestShape present, RestShape next);
}
