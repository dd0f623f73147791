/**
 * What happens to the operated ear with time: relaxation with internal variables, bites that
 * migrate, knots that seat, threads that lose strength, scar that forms free of stress, and the
 * steps in time that follow all of it.
 *
 * <p>Everything that changes is a {@link auricle.healing.TimePart}: it gives energy terms whose
 * minimum is the state at the end of a step, and takes its own variables along when that state is
 * found. Time is in seconds inside.
 */
@org.jspecify.annotations.NullMarked
package auricle.healing;
