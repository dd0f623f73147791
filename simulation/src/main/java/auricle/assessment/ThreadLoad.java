package auricle.assessment;

/**
 * What a thread carries, and what it and the tissue around its bites can carry.
 *
 * @param name name of its operation
 * @param tension_n tension, N
 * @param knotPull_n least knot-pull strength, N
 * @param tearThrough_n tension at which its bites tear out, N
 */
public record ThreadLoad(String name, double tension_n, double knotPull_n, double tearThrough_n) {}
