package auricle.material;

/**
 * What the ear stands on and leans against.
 *
 * @param normal_mpa_per_mm bedding stiffness of the floor at right angles to the head, MPa/mm
 * @param tangential_mpa_per_mm the same along the head, MPa/mm
 * @param contactGap_mm gap below which two faces begin to press, mm
 * @param contactPressure_mpa pressure at half that gap, MPa
 */
public record HeadTissue(
    double normal_mpa_per_mm,
    double tangential_mpa_per_mm,
    double contactGap_mm,
    double contactPressure_mpa) {}
