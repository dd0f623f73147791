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
  default void alter(ShellBody body) {}

  /** Makes the change and leads the body to rest. */
  default Settled make(ShellBody body, Solving solving) {
    alter(body);
    body.changed();
    return body.settle(solving);
  }
}
