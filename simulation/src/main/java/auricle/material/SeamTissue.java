package auricle.material;

/**
 * A sutured seam between two edges of cartilage.
 *
 * @param bendingShare bending stiffness over that of whole cartilage
 * @param width_mm width over which it is softer, mm
 */
public record SeamTissue(double bendingShare, double width_mm) {}
