package auricle.rehearsal;

/**
 * Greatest strain and stress of a state: of the greatest magnitude of a principal value on either
 * face of the cartilage, means over discs as wide as the wall is thick.
 *
 * @param strain no unit
 * @param stress_mpa MPa
 */
public record Extremes(Extreme strain, Extreme stress_mpa) {}
