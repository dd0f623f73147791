package auricle.assessment;

/**
 * Something to beware of in a result.
 *
 * @param kind what
 * @param words a sentence in the trade's words, with value and limit
 * @param measured what was measured, in the unit of the limit; the count of operations where it is
 *     about the plan
 * @param limit what it is held against
 * @param where a level's key, or the name of an operation
 */
public record Caution(CautionKind kind, String words, double measured, Limit limit, String where) {}
