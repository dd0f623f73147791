package auricle.viewer.viewmodel;

/**
 * The view models of one window.
 *
 * @param desk what is worked on
 * @param steps of its plan
 * @param solving works it out
 * @param showing what is shown of the result
 * @param other the second ear of a pair
 * @param look how the screens look
 */
public record Models(
    Desk desk, PlanSteps steps, Solving solving, Showing showing, OtherSide other, Look look) {}
