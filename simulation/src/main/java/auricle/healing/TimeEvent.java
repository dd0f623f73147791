package auricle.healing;

/**
 * Something that happened between two states.
 *
 * @param time_s when, s since the start
 * @param words what, in words
 */
public record TimeEvent(double time_s, String words) {}
