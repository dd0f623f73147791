package auricle.numerics;

import auricle.numerics.FactorTasks.Task;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;

/**
 * A numeric factorisation under way: which columns are done, and the first that broke down.
 *
 * <p>Tasks are begun in the order of their list and wait for the columns they need. A task gives up
 * only if a column before its own broke down; so every column before the first broken one is done,
 * whoever did it.
 */
final class FactorRun {
  private final AtomicIntegerArray done;
  private final AtomicInteger broken = new AtomicInteger(Integer.MAX_VALUE);

  FactorRun(int supernodes) {
    done = new AtomicIntegerArray(supernodes);
  }

  /** Forgets the factorisation before. */
  void begin() {
    broken.set(Integer.MAX_VALUE);
    for (int s = 0; s < done.length(); s++) {
      done.set(s, 0);
    }
  }

  /** Makes the columns of a task. */
  void make(Task task, FactorPanel panel, double[] values, SupernodeLayout layout) {
    try {
      boolean whole = true;
      for (int s = task.first(); whole && s < task.end(); s++) {
        whole = panel.make(s, task.from(), Math.min(task.to(), layout.width(s)), values, this);
      }
    } catch (RuntimeException | Error e) {
      breakAt(-1);
      throw e;
    }
  }

  /**
   * Waits until some columns of a supernode are done.
   *
   * @param columns how many
   * @param waiting the column that waits for them
   * @return false if they are not going to be, or no one needs the column that waits
   */
  boolean await(int supernode, int columns, int waiting) {
    for (int round = 0; done.getAcquire(supernode) < columns; round++) {
      if (broken.get() < waiting) {
        return false;
      }
      Workers.pause(round);
    }
    return true;
  }

  /** Tells that so many columns of a supernode are done. */
  void done(int supernode, int columns) {
    done.setRelease(supernode, columns);
  }

  /** Tells that a column broke down. */
  void breakAt(int column) {
    broken.accumulateAndGet(column, Math::min);
  }

  /** The first column that broke down; beyond all columns if none did. */
  int broken() {
    return broken.get();
  }
}
