package auricle.surgery;

import java.util.List;

/**
 * An operation as mechanics: what it puts in before anything is done, and what it then changes.
 * Implementations change the body that they are given and no other.
 */
interface Change {
  /** Threads that it will tie; in the body from the start, pulling at nothing. */
  default List<BodyThread> threads() {
    return List.of();
  }

  /** Alters rest shape and sections, without leading the body to rest. */
  default void alter(AlteredSheet sheet) {}

  /**
   * Ties its threads as they would be if it had been made where another was.
   *
   * @param other of the same kind, made, by doses that may differ
   * @param u unknowns of both
   */
  default void tieAs(Change other, double[] u) {}

  /** Makes the change and leads the body to rest. */
  default Settled make(ShellBody body, Solving solving) {
    alter(body.sheet());
    body.sheet().altered();
    return body.settle(solving);
  }
}
