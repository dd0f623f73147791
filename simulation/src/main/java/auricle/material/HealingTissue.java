package auricle.material;

/**
 * How the ear heals.
 *
 * @param adhering_days time in which undermined skin sticks and scar gains strength, days
 * @param scarModulus_mpa Young's modulus of ripe scar, MPa
 * @param scarThickness_mm its thickness, mm
 * @param skinStripTension_n_per_mm tension of a fresh skin closure per length, N/mm
 * @param skinStripFraction share of that which relaxes
 * @param skinStrip_days time in which it relaxes, days
 * @param remodelling_days time in which cartilage that is held bent grows into the bend, days: of a
 *     bend held so long a share of 1 − 1/e has become its own
 */
public record HealingTissue(
    double adhering_days,
    double scarModulus_mpa,
    double scarThickness_mm,
    double skinStripTension_n_per_mm,
    double skinStripFraction,
    double skinStrip_days,
    double remodelling_days) {}
