package auricle.material;

/**
 * Tissue around a bite of the needle.
 *
 * @param tearThrough_n force at which the bite tears through, N
 * @param migration_mm_per_day_n speed of a bite through fresh tissue per newton, mm/(d·N)
 * @param knotSlack_mm length that a knot gives when it seats, mm
 * @param knotSeating_days time over which it does, days
 * @param workingShare tension over tear-through below which a bite is sound
 */
public record BiteTissue(
    double tearThrough_n,
    double migration_mm_per_day_n,
    double knotSlack_mm,
    double knotSeating_days,
    double workingShare) {}
