package auricle.viewer.viewmodel;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * A value with everything it was before, for undo and redo without limit. Changes of one gesture (a
 * control that is being turned) count as one.
 */
public final class History<T> {
  private final Deque<T> past = new ArrayDeque<>();
  private final Deque<T> future = new ArrayDeque<>();
  private T present;
  private String gesture = "";

  /** Starts with a value. */
  public History(T start) {
    present = start;
  }

  /** The value now. */
  public T present() {
    return present;
  }

  /**
   * Changes the value.
   *
   * @param gestureName changes that follow each other under the same name that is not empty are
   *     undone together
   */
  public void change(T value, String gestureName) {
    if (value.equals(present)) {
      return;
    }
    if (gestureName.isEmpty() || !gestureName.equals(gesture)) {
      past.push(present);
    }
    gesture = gestureName;
    present = value;
    future.clear();
  }

  /** Ends a gesture: the next change is undone by itself. */
  public void endGesture() {
    gesture = "";
  }

  /** Whether there is something to undo. */
  public boolean canUndo() {
    return !past.isEmpty();
  }

  /** Whether there is something to redo. */
  public boolean canRedo() {
    return !future.isEmpty();
  }

  /** Back by one change. */
  public void undo() {
    if (canUndo()) {
      future.push(present);
      present = past.pop();
      gesture = "";
    }
  }

  /** Forward by one change. */
  public void redo() {
    if (canRedo()) {
      past.push(present);
      present = future.pop();
      gesture = "";
    }
  }
}
