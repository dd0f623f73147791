package auricle.rehearsal;

import auricle.diagnostics.BadInputException;
import auricle.plan.Operation;
import auricle.plan.Tie;
import auricle.plan.TiedOperation;
import auricle.surgery.EarBody;
import auricle.surgery.RestState;
import auricle.surgery.Settled;
import auricle.surgery.Solving;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Doses of a plan that is done, turned from where its end came to rest. */
final class Turn {
  private final List<Operation> then;
  private final List<Operation> now;
  private final IntFunction<RestState> states;
  private EarBody body;

  /**
   * @param body at the end of the plan, at rest
   * @param then operations that were done to it
   * @param now the same by other doses
   * @param states at rest after each operation, by its index
   */
  Turn(EarBody body, List<Operation> then, List<Operation> now, IntFunction<RestState> states) {
    this.body = body;
    this.states = states;
    this.then = then;
    this.now = now;
  }

  /** Whether two plans have the same steps, and differ by doses alone. */
  static boolean dosesAlone(List<Operation> then, List<Operation> now) {
    return !then.equals(now)
        && then.size() == now.size()
        && IntStream.range(0, now.size()).allMatch(i -> alike(then.get(i), now.get(i)));
  }

  private static boolean alike(Operation a, Operation b) {
    boolean same = a.kind().equals(b.kind()) && a.name().equals(b.name());
    return same
        && (!(a instanceof TiedOperation s)
            || !(b instanceof TiedOperation t)
            || s.thread().equals(t.thread()));
  }

  /** The body at the end of the plan; another after some turns. */
  EarBody body() {
    return body;
  }

  /** The last step that differs. */
  Operation turned() {
    return now.get(differing()[differing().length - 1]);
  }

  private int[] differing() {
    return IntStream.range(0, now.size()).filter(i -> !now.get(i).equals(then.get(i))).toArray();
  }

  /**
   * Leads the ear to rest under the doses of now. On failure it stays where it was.
   *
   * @throws BadInputException if a thread is not in the tables
   */
  Settled follow(Solving solving) throws BadInputException {
    int[] differing = differing();
    int only = differing.length == 1 ? differing[0] : -1;
    return only >= 0 && gapAlone(then.get(only), now.get(only))
        ? gap(only, solving)
        : doses(solving);
  }

  private Settled gap(int index, Solving solving) {
    RestState before = body.save();
    Tie.Gap to = (Tie.Gap) ((TiedOperation) now.get(index)).tie();
    Settled settled = body.turn(index, to, solving);
    if (!settled.converged()) {
      body.restore(before);
    }
    return settled;
  }

  private Settled doses(Solving solving) throws BadInputException {
    EarBody next = EarBody.of(body.auricle(), body.tissue(), now);
    Settled settled = next.turnFrom(body, differing()[0], states, solving);
    body = settled.converged() ? next : body;
    return settled;
  }

  private static boolean gapAlone(Operation then, Operation now) {
    return then instanceof TiedOperation a
        && now instanceof TiedOperation b
        && a.tie() instanceof Tie.Gap
        && b.tie() instanceof Tie.Gap
        && a.withTie(b.tie()).equals(b);
  }
}
