package auricle.surgery;

import auricle.numerics.Outcome;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * Doses turned at the end of a plan: a body is led from its rest under some to that under others,
 * without going through the steps again.
 *
 * <p>Where a tissue comes to rest under given lengths of thread does not depend on the way, so this
 * is where a whole run ends if the lengths are the same. That of a loop tied to a gap follows from
 * its bites, as they stood when it was tied. That of a loop tied at a tension is what the pull
 * leaves it when it is knotted: for these the body is led once more to where it stood at that step.
 */
final class DoseTurn {
  private final ShellBody body;
  private final List<Change> here;
  private final Standing from;
  private final List<Change> there;
  private final Solving solving;
  private final Map<Integer, Double> lengths = new HashMap<>();
  private int altered;

  /** Whether the body was led elsewhere for a knot. */
  private boolean knotted;

  /**
   * @param body at rest, all changes by other doses made
   * @param here changes to be made instead
   * @param from where it stands
   */
  DoseTurn(ShellBody body, List<Change> here, Standing from, Solving solving) {
    this.body = body;
    this.here = here;
    this.from = from;
    this.solving = solving;
    there = from.changes().inOrder();
  }

  /**
   * Leads the body to rest; on failure it may be anywhere.
   *
   * @param states where a body like it came to rest after each change; -1 for before the first
   */
  Settled follow(IntFunction<RestState> states) {
    int[] differing = IntStream.range(0, here.size()).filter(this::differs).toArray();
    int first = differing[0];
    boolean oneGap =
        differing.length == 1
            && here.get(first) instanceof LoopTie loop
            && loop.anotherGapAlone(there.get(first));
    return oneGap ? gapAlone(first) : doses(first, states);
  }

  private boolean differs(int i) {
    return here.get(i) != there.get(i);
  }

  private Settled gapAlone(int i) {
    gap(i, k -> from.state());
    return isToBeTied(i) ? tie(i, solving) : Settled.untouched();
  }

  private Settled doses(int first, IntFunction<RestState> states) {
    body.anew(here.stream().flatMap(change -> change.threads().stream()).toList());
    for (int i = 0; i < here.size(); i++) {
      gap(i, states);
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

  private void gap(int i, IntFunction<RestState> states) {
    if (here.get(i) instanceof LoopTie loop && there.get(i) instanceof LoopTie other) {
      if (!loop.throughTheBitesOf(other)) {
        body.restore(states.apply(i - 1));
      }
      Optional.ofNullable(from.lengths().get(i))
          .flatMap(tied -> loop.lengthAfter(other, tied, body.unknowns()))
          .ifPresent(length -> lengths.put(i, length));
    }
  }

  private void alterUpTo(int last) {
    for (; altered <= last; altered++) {
      here.get(altered).alter(body.sheet());
    }
  }

  private Optional<Double> knot(LoopTie loop, int i, RestState state) {
    knotted = true;
    alterUpTo(i);
    body.restore(state);
    tieBefore(i);
    stretch(i);
    return loop.knot(body, solving.quiet());
  }

  /** Gives the loops before one the lengths that were found for them, wherever the body is. */
  private void tieBefore(int i) {
    for (int k = 0; k < i; k++) {
      Double length = lengths.get(k);
      if (length != null) {
        ((LoopTie) here.get(k)).keep(length);
      } else {
        here.get(k).tieAs(there.get(k), body.unknowns());
      }
    }
  }

  private Settled end() {
    alterUpTo(here.size() - 1);
    return atOnce().orElseGet(this::oneByOne);
  }

  /** From where the body stands with the stiffness that it has there, if that is known. */
  private Optional<Settled> atOnce() {
    if (knotted || !throughTheSameBites()) {
      return Optional.empty();
    }
    body.restore(from.state());
    tieBefore(here.size());
    return body.settleNearby(solving);
  }

  private boolean throughTheSameBites() {
    return IntStream.range(0, here.size())
        .allMatch(i -> here.get(i).threads().equals(there.get(i).threads()));
  }

  /** First what was altered, threads stretched as they were, then the threads in turn. */
  private Settled oneByOne() {
    body.standAt(from);
    for (int k = 0; k < here.size(); k++) {
      stretch(k);
    }
    int[] loops = IntStream.range(0, here.size()).filter(this::isToBeTied).toArray();
    Settled settled = body.settle(solving);
    for (int i = 0; i < loops.length && settled.converged(); i++) {
      boolean last = i == loops.length - 1;
      settled = tie(loops[i], last ? solving : solving.quiet()).after(settled);
    }
    return settled;
  }

  private void stretch(int k) {
    Double tied = from.lengths().get(k);
    if (tied != null && here.get(k) instanceof LoopTie loop) {
      loop.stretchAs((LoopTie) there.get(k), tied, body.unknowns());
    } else {
      here.get(k).tieAs(there.get(k), body.unknowns());
    }
  }

  /** Whether a loop has another length than was found for it. */
  private boolean isToBeTied(int k) {
    Double length = lengths.get(k);
    return length != null
        && here.get(k) instanceof LoopTie loop
        && !loop.length_mm().equals(Optional.of(length));
  }

  private Settled tie(int k, Solving how) {
    double length = Optional.ofNullable(lengths.get(k)).orElseThrow();
    return ((LoopTie) here.get(k)).tieTo(length, body, how);
  }
}
