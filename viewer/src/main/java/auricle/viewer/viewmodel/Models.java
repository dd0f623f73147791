package auricle.viewer.viewmodel;

/**
 * The view models of one window.
 *
 * @param desk what is worked on
 * @param steps of its plan
 * @param solving works it out
 * @param showing what is shown of the result
 * @param look how the screens look
 */
public record Models(Desk desk, PlanSteps steps, Solving solving, Showing showing, Look look) {}
