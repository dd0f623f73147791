package auricle.plan;

/**
 * Where a thread takes hold of the cartilage, on its posterior face.
 *
 * @param level_percent level on the fold line beside which it lies, % of the height of the ear
 * @param fromFold_mm distance from the fold line along the profile at rest, mm; + towards the rim,
 *     − towards the bowl
 */
public record Bite(double level_percent, double fromFold_mm) {}
