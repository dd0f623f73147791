package auricle.surgery;

import auricle.numerics.Outcome;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;

/**
 * Doses turned at the end of a plan: one body is led to rest from where another stands, without
 * going through the steps again.
 *
 * <p>Where a tissue comes to rest under given lengths of thread does not depend on the way, so this
 * is where a whole run ends if the lengths are the same. That of a loop tied to a gap follows from
 * its bites, as they stood when it was tied. That of a loop tied at a tension is what the pull
 * leaves it when it is knotted: for these the body is led once more to where it stood at that step.
 */
final class DoseTurn {
  private final ShellBody body;
  private final List<Change> here;
  private final ShellBody from;
  private final List<Change> there;
  private final Solving solving;
  private final Map<Integer, Double> lengths = new HashMap<>();
  private int altered;

  /**
   * @param body to which nothing has been done yet
   * @param here its changes
   * @param from where it begins
   * @param there as many changes of the same kinds, all of them made
   */
  DoseTurn(ShellBody body, List<Change> here, ShellBody from, List<Change> there, Solving solving) {
    this.body = body;
    this.here = here;
    this.from = from;
    this.there = there;
    this.solving = solving;
  }

  /**
   * Leads the body to rest.
   *
   * @param first change that differs
   * @param states where a body like it came to rest after each change
   */
  Settled follow(int first, IntFunction<RestState> states) {
    for (int i = 0; i < here.size(); i++) {
      gap(i, states.apply(i - 1));
    }
    for (int i = first; i < here.size(); i++) {
      if (here.get(i) instanceof LoopTie loop && loop.newlyKnotted(there.get(i))) {
        Optional<Double> knot = knot(loop, i, states.apply(i));
        if (knot.isEmpty()) {
          return Settled.untouched().ended(Outcome.STALLED, "a knot on the way was not found");
        }
        lengths.put(i, knot.get());
      }
    }
    return end();
  }

  private void gap(int i, RestState before) {
    if (here.get(i) instanceof LoopTie loop && there.get(i) instanceof LoopTie other) {
      body.restore(before);
      loop.lengthAfter(other, body.unknowns()).ifPresent(length -> lengths.put(i, length));
    }
  }

  private void alterUpTo(int last) {
    for (; altered <= last; altered++) {
      here.get(altered).alter(body);
    }
  }

  private Optional<Double> knot(LoopTie loop, int i, RestState state) {
    alterUpTo(i);
    body.restore(state);
    for (int k = 0; k < i; k++) {
      Double length = lengths.get(k);
      if (length != null) {
        ((LoopTie) here.get(k)).keep(length);
      } else {
        here.get(k).tieAs(there.get(k), body.unknowns());
      }
    }
    loop.stretchAs(there.get(i), body.unknowns());
    return loop.knot(body, solving);
  }

  private Settled end() {
    alterUpTo(here.size() - 1);
    body.standWhere(from);
    for (int k = 0; k < here.size(); k++) {
      here.get(k).stretchAs(there.get(k), body.unknowns());
    }
    Settled settled = body.settle(solving);
    for (int k = 0; k < here.size() && settled.converged(); k++) {
      Settled before = settled;
      settled = tied(k).map(after -> after.after(before)).orElse(before);
    }
    return settled;
  }

  private Optional<Settled> tied(int k) {
    if (!(here.get(k) instanceof LoopTie loop)) {
      return Optional.empty();
    }
    Double length = lengths.get(k);
    return length == null ? Optional.empty() : loop.tieTo(length, body, solving);
  }
}
