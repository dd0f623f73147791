package auricle.rehearsal;

import auricle.plan.Operation;
import auricle.plan.TiedOperation;
import java.util.List;
import java.util.stream.IntStream;

/** Two plans of the same steps of which one has other doses. */
record Turn(List<Operation> then, List<Operation> now) {
  /** Whether that is what they are. */
  boolean dosesAlone() {
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

  /** The last step that differs. */
  Operation turned() {
    int i = now.size() - 1;
    while (now.get(i).equals(then.get(i))) {
      i--;
    }
    return now.get(i);
  }
}
