package auricle.analysis;

/**
 * One orthotropic layer.
 *
 * @param thickness_mm thickness
 * @param e1_mpa modulus along the fibres
 * @param e2_mpa modulus across them
 * @param nu12 contraction along 2 under stress along 1
 * @param g12_mpa shear modulus
 * @param angle_deg from the material axis to the fibres, anticlockwise about the normal
 * @param free1 strain along the fibres that the ply would take by itself at full load
 * @param free2 the same across them
 */
public record Ply(
    double thickness_mm,
    double e1_mpa,
    double e2_mpa,
    double nu12,
    double g12_mpa,
    double angle_deg,
    double free1,
    double free2) {}
