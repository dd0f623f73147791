package auricle.surgery;

import auricle.mesh.RestShape;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where an ear stands after a plan, with all that other doses would change of it: to be led on from
 * or to go back to. Immutable.
 */
public final class Standing {
  private final PlannedChanges changes;
  private final Map<Integer, Double> lengths = new HashMap<>();
  private final RestShape target;
  private final BodySections sections;
  private final List<BodyThread> threads;
  private final RestState state;

  /**
   * @param changes its operations, all made
   * @param target its rest shape; a copy of its own
   * @param sections a copy of its own
   */
  Standing(
      PlannedChanges changes,
      RestShape target,
      BodySections sections,
      List<BodyThread> threads,
      RestState state) {
    this.changes = changes;
    this.target = target;
    this.sections = sections;
    this.threads = threads;
    this.state = state;
    List<Change> made = changes.inOrder();
    for (int i = 0; i < made.size(); i++) {
      int index = i;
      if (made.get(i) instanceof LoopTie loop) {
        loop.length_mm().ifPresent(length -> lengths.put(index, length));
      }
    }
  }

  PlannedChanges changes() {
    return changes;
  }

  /** Lengths of thread that loops were tied to, mm, by the index of their operation. */
  Map<Integer, Double> lengths() {
    return lengths;
  }

  RestShape target() {
    return target;
  }

  BodySections sections() {
    return sections;
  }

  List<BodyThread> threads() {
    return threads;
  }

  RestState state() {
    return state;
  }
}
