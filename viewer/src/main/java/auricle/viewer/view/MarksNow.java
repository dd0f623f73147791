package auricle.viewer.view;

import auricle.plan.Operation;
import auricle.plan.Plan;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.viewmodel.Handle;
import auricle.viewer.viewmodel.Marks;
import auricle.viewer.viewmodel.PlanSteps;
import auricle.viewer.viewmodel.Showing;

/** Lays the marks of a plan on the ear: those that are asked for, the step worked on stands out. */
final class MarksNow {
  private final EarMarks marks;
  private final Showing showing;
  private final PlanSteps steps;

  MarksNow(EarMarks marks, Showing showing, PlanSteps steps) {
    this.marks = marks;
    this.showing = showing;
    this.steps = steps;
  }

  void draw(Rehearsed r, Moment m) {
    marks.begin();
    if (showing.marks().get()) {
      marks.foldLine(m);
      lines(r, m);
      handles(r, m);
    }
    if (showing.threads().get()) {
      String name = steps.operation().map(Operation::name).orElse("");
      m.threads().forEach(t -> marks.thread(t, t.name().equals(name)));
    }
    marks.end();
  }

  private void lines(Rehearsed r, Moment m) {
    Plan plan = r.ear().plan();
    for (int i = 0; i < plan.operations().size(); i++) {
      if (plan.operations().get(i).enabled()) {
        for (Marks.Line line : Marks.lines(plan, i, r.map())) {
          marks.line(line, m.surface(), i == steps.chosen().get());
        }
      }
    }
  }

  private void handles(Rehearsed r, Moment m) {
    Plan plan = r.ear().plan();
    int chosen = steps.chosen().get();
    if (chosen >= 0 && chosen < plan.operations().size()) {
      for (Handle handle : Marks.handles(plan, chosen)) {
        marks.handle(handle, m.surface(), r.map());
      }
    }
  }
}
