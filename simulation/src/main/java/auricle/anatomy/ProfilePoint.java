package auricle.anatomy;

/**
 * A point of a profile.
 *
 * @param out distance from the foot along the profile's trace in the lateral view, mm
 * @param lateral distance from the mastoid plane, mm
 * @param slope direction of the profile: 0 outwards, pi/2 lateral, pi back inwards, rad
 */
record ProfilePoint(double out, double lateral, double slope) {}
