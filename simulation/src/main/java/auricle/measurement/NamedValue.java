package auricle.measurement;

/**
 * A figure as tables and files show it.
 *
 * @param key name in files; it ends with the unit where there is one ({@code fold_angle_upper_deg})
 * @param label what the trade calls it
 * @param unit mm or deg; empty for a count
 * @param value in that unit
 */
public record NamedValue(String key, String label, String unit, double value) {}
