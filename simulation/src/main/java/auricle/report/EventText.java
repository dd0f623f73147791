package auricle.report;

import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.StepResult;

/** What happened to an ear on the way to its rests, for the terminal: snaps, loops that shut. */
final class EventText {
  private EventText() {}

  /** The lines; nothing if nothing happened. */
  static String write(RehearsalResult ear) {
    StringBuilder lines = new StringBuilder();
    for (StepResult step : ear.steps()) {
      for (String event : step.outcome().events()) {
        lines.append("  ").append(step.label()).append(": ").append(event).append('\n');
      }
    }
    return lines.isEmpty() ? "" : "On the way\n" + lines + "\n";
  }
}
