package auricle.rehearsal;

/**
 * A place in the frame of the ear: right ear, origin on the head surface at the centre of the
 * conchal floor.
 *
 * @param lateral_mm away from the head, mm
 * @param anterior_mm towards the face, mm
 * @param superior_mm upwards, mm
 */
public record Position(double lateral_mm, double anterior_mm, double superior_mm) {}
