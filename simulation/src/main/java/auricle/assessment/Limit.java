package auricle.assessment;

/**
 * A value beyond which something is called a fault or deserves a caution.
 *
 * @param key its name in the table of limits
 * @param value in its unit
 * @param unit mm, deg, or empty for a share
 * @param source who says so; "convention of this project" where nobody did
 * @param confidence how sure that is: seen, 2nd, memory, derived, practice or convention
 */
public record Limit(String key, double value, String unit, String source, String confidence) {}
