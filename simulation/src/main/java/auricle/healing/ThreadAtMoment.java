package auricle.healing;

/**
 * A thread at a time after it was tied.
 *
 * @param name name of the operation that put it in
 * @param tension_n tension all along it, N
 * @param knotPull_n knot-pull strength that is left, N
 * @param tearThrough_n tension at which its bites tear out of the tissue, N
 * @param slip_mm by how much its loop is longer than when tied, mm: bites that migrated, knot that
 *     seated
 * @param slack whether it carries nothing though it holds
 * @param gone whether it has let go
 */
public record ThreadAtMoment(
    String name,
    double tension_n,
    double knotPull_n,
    double tearThrough_n,
    double slip_mm,
    boolean slack,
    boolean gone) {}
