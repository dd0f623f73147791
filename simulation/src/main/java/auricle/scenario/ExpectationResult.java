package auricle.scenario;

import auricle.anatomy.Side;

/**
 * One thing that was expected, and what came out.
 *
 * @param side which ear
 * @param what what is meant: a measurement and when, a caution, equilibrium
 * @param expected what it should be, in words
 * @param found what came out, in the unit; NaN if there is no number
 * @param foundWords what came out, in words
 * @param unit of the number; empty if it has none
 * @param met whether it came out as expected; never if nothing came out
 * @param because why it was expected
 */
public record ExpectationResult(
    Side side,
    String what,
    String expected,
    double found,
    String foundWords,
    String unit,
    boolean met,
    String because) {}
