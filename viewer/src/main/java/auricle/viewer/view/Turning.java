package auricle.viewer.view;

import auricle.viewer.viewmodel.PlanSteps;

/** Hands turned doses on to the plan, but not those that a control is merely given to show. */
final class Turning {
  private final PlanSteps steps;
  private boolean filling;

  Turning(PlanSteps steps) {
    this.steps = steps;
  }

  /** A control has a new value. */
  void turn(String key, double value) {
    if (!filling) {
      steps.turn(key, value);
    }
  }

  /** The hand has left the control. */
  void end() {
    steps.endTurn();
  }

  /** Does what gives controls the values of the plan. */
  void filling(Runnable fill) {
    filling = true;
    fill.run();
    filling = false;
  }
}
