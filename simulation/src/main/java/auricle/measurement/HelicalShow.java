package auricle.measurement;

/**
 * How far the helix stands beyond the antihelix, seen from the front, at one height.
 *
 * @param level_percent height as a share of ear height, 0 at the lowest point of the lobule, 100 at
 *     the top of the helix
 * @param show_mm lateral distance of the helix beyond the antihelix; negative where the antihelix
 *     hides it
 */
public record HelicalShow(double level_percent, double show_mm) {}
