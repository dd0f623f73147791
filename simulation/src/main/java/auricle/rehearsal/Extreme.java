package auricle.rehearsal;

/**
 * The greatest value of a field over the ear.
 *
 * @param value strain (no unit) or stress (MPa)
 * @param triangle of the mesh
 * @param region key of its region
 * @param heightPercent share of the ear's height at rest, 0 lowest point of the lobule
 * @param at centre of the triangle in the present shape
 * @param words the place in words, such as "antihelix, upper third"
 */
public record Extreme(
    double value, int triangle, String region, double heightPercent, Position at, String words) {}
