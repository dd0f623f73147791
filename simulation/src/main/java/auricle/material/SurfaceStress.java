package auricle.material;

/**
 * Interlocked stress of cartilage: its faces are in tension and its core in compression, in
 * balance.
 *
 * @param layerShare thickness of a tense face layer over the thickness of the cartilage
 * @param shortening strain by which such a layer would shorten if it were free
 */
public record SurfaceStress(double layerShare, double shortening) {}
