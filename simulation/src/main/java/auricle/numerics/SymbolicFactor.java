package auricle.numerics;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What a factorisation is by the pattern of the matrix alone: ordering, supernodes, and which of
 * them update which. Immutable.
 *
 * <p>An ear whose doses are turned has the pattern that it had before, so another's may serve.
 */
final class SymbolicFactor {
  private final SymmetricPattern pattern;
  private final SupernodeLayout layout;
  private final UpdateList updates;
  private final EntryMap entries;
  private final FactorTasks tasks;

  private SymbolicFactor(SymmetricPattern pattern) {
    this.pattern = pattern;
    layout = SupernodeLayout.of(pattern);
    updates = new UpdateList(layout);
    entries = new EntryMap(pattern, layout);
    tasks = new FactorTasks(layout, updates);
  }

  /**
   * That of a pattern.
   *
   * @param known another, which is taken where it is of an equal pattern
   */
  static SymbolicFactor of(SymmetricPattern pattern, @Nullable SymbolicFactor known) {
    return known != null && known.isOf(pattern) ? known : new SymbolicFactor(pattern);
  }

  private boolean isOf(SymmetricPattern other) {
    return Arrays.equals(pattern.columnStart(), other.columnStart())
        && Arrays.equals(pattern.rowIndex(), other.rowIndex());
  }

  /** Order of the columns, and their supernodes. */
  SupernodeLayout layout() {
    return layout;
  }

  /** Which supernodes update which. */
  UpdateList updates() {
    return updates;
  }

  /** Where the matrix's entries go. */
  EntryMap entries() {
    return entries;
  }

  /** Pieces that several threads can make. */
  FactorTasks tasks() {
    return tasks;
  }
}
