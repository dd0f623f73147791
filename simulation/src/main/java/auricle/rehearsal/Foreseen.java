package auricle.rehearsal;

import java.util.List;

/**
 * Where an ear is expected to come to rest: not balanced yet, and nothing is measured on it.
 *
 * @param shape there; its fields are those of the rest that it comes from
 * @param threads all threads that are in, tied or slack
 */
public record Foreseen(DeformedEar shape, List<ThreadState> threads) {
  /** Keeps its own copy of the list. */
  public Foreseen {
    threads = List.copyOf(threads);
  }
}
