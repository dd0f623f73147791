package auricle.surgery;

import auricle.plan.Operation;
import auricle.plan.TiedOperation;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/** The operations of a plan, in order, each with its mechanics. */
final class PlannedChanges {
  /** No operation at all. */
  static final PlannedChanges NONE = new PlannedChanges(List.of(), operation -> new Change() {});

  private final Map<Operation, Change> changes = new LinkedHashMap<>();

  /**
   * @param maker makes the mechanics of one
   */
  PlannedChanges(List<Operation> operations, Function<Operation, Change> maker) {
    operations.forEach(operation -> changes.put(operation, maker.apply(operation)));
  }

  List<Operation> operations() {
    return List.copyOf(changes.keySet());
  }

  List<Change> inOrder() {
    return List.copyOf(changes.values());
  }

  /** Threads of all of them. */
  List<BodyThread> threads() {
    return changes.values().stream().flatMap(change -> change.threads().stream()).toList();
  }

  /**
   * @throws IllegalArgumentException if the operation is none of them
   */
  Change of(Operation operation) {
    Change change = changes.get(operation);
    if (change == null) {
      throw new IllegalArgumentException("the body was not made for '" + operation.name() + "'");
    }
    return change;
  }

  /**
   * The same plan by other doses: what is the same, and threads in their bites, are kept.
   *
   * @param now as many operations of the same kinds, names and threads
   */
  PlannedChanges by(List<Operation> now, Function<Operation, Change> maker) {
    List<Operation> then = operations();
    Map<Operation, Change> kept = new LinkedHashMap<>();
    IntStream.range(0, now.size())
        .forEach(i -> kept(then.get(i), now.get(i)).ifPresent(c -> kept.put(now.get(i), c)));
    return new PlannedChanges(
        now,
        operation ->
            Optional.ofNullable(kept.get(operation)).orElseGet(() -> maker.apply(operation)));
  }

  private Optional<Change> kept(Operation then, Operation now) {
    if (then.equals(now)) {
      return Optional.of(of(then));
    }
    return then instanceof TiedOperation before
            && now instanceof TiedOperation after
            && before.withTie(after.tie()).equals(now)
            && of(then) instanceof LoopTie loop
        ? Optional.of(loop.tiedBy(after.tie()))
        : Optional.empty();
  }
}
