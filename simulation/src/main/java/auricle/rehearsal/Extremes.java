package auricle.rehearsal;

/**
 * Greatest strain and stress of a state.
 *
 * @param strain greatest magnitude of a principal strain on either face of the cartilage, no unit
 * @param stress_mpa greatest magnitude of a principal stress on either face of the cartilage, MPa
 */
public record Extremes(Extreme strain, Extreme stress_mpa) {}
