package auricle.numerics;

import java.lang.ref.SoftReference;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * What a factorisation is by the pattern of the matrix alone: ordering, supernodes, and which of
 * them update which. Immutable.
 *
 * <p>Bodies that are made one after the other mostly have one pattern, an ear whose doses are
 * turned, say: so the last one is kept as long as there is room.
 */
final class SymbolicFactor {
  private static final AtomicReference<@Nullable SoftReference<SymbolicFactor>> LAST =
      new AtomicReference<>();

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

  /** That of a pattern; from any thread. */
  static SymbolicFactor of(SymmetricPattern pattern) {
    SoftReference<SymbolicFactor> kept = LAST.get();
    SymbolicFactor known = kept == null ? null : kept.get();
    if (known != null && known.isOf(pattern)) {
      return known;
    }
    SymbolicFactor made = new SymbolicFactor(pattern);
    LAST.set(new SoftReference<>(made));
    return made;
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
