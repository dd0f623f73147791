package auricle.viewer.viewmodel;

import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.task.Rehearsed.Reach;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;

/** Which moment of the course is shown, and how. */
public final class Showing {
  private final ReadOnlyObjectWrapper<Optional<Moment>> moment =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Rehearsed>> result =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Seen>> seen =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ObjectProperty<Paint> paint = new SimpleObjectProperty<>(Paint.SKIN);
  private final BooleanProperty ghost = new SimpleBooleanProperty(true);
  private final BooleanProperty head = new SimpleBooleanProperty(true);
  private final BooleanProperty target = new SimpleBooleanProperty(true);
  private final BooleanProperty threads = new SimpleBooleanProperty(true);
  private final BooleanProperty marks = new SimpleBooleanProperty(true);
  private Place place = Place.TIED;

  /** Where in the course: kept when a new result comes, whatever its number of steps. */
  private record Place(boolean healed, int step, double days) {
    static final Place TIED = new Place(false, Integer.MAX_VALUE, 0);
  }

  /**
   * What the ear is drawn from: the moment that is shown, or, in place of the end of the operation,
   * what is foreseen of it.
   *
   * @param result that the moment belongs to
   */
  public record Seen(Rehearsed result, Moment moment) {
    /** Whether this looks as another has foreseen it. */
    public boolean isAsForeseen(Seen other) {
      return other.result.reach() == Reach.FORESEEN
          && other.result.ear().equals(result.ear())
          && other.moment.surface().looksLike(moment.surface());
    }
  }

  /** Shows the results of a solver, and what it foresees. */
  public Showing(
      ReadOnlyObjectProperty<Optional<Rehearsed>> results,
      ReadOnlyObjectProperty<Optional<Rehearsed>> foreseen) {
    results.addListener((o, was, now) -> follow(now));
    foreseen.addListener((o, was, now) -> foresee(now));
    follow(results.get());
  }

  private void foresee(Optional<Rehearsed> now) {
    if (now.isPresent() && atTheEnd()) {
      seen.set(now.map(r -> new Seen(r, r.tied())));
    } else if (seen.get().map(Seen::result).filter(r -> r.reach() == Reach.FORESEEN).isPresent()) {
      see();
    }
  }

  /** Whether what is shown is the end of the operation, as far as it is known. */
  private boolean atTheEnd() {
    return !place.healed() && moment.get().equals(result.get().map(Rehearsed::tied));
  }

  private void see() {
    seen.set(result.get().flatMap(r -> moment.get().map(m -> new Seen(r, m))));
  }

  private void follow(Optional<Rehearsed> now) {
    result.set(now);
    find();
  }

  private void find() {
    moment.set(result.get().flatMap(this::at));
    see();
  }

  private Optional<Moment> at(Rehearsed r) {
    List<Moment> times = r.times();
    if (place.healed() && !times.isEmpty()) {
      return times.stream()
          .min(java.util.Comparator.comparingDouble(m -> Math.abs(m.days() - place.days())));
    }
    return Optional.of(r.steps().get(Math.min(place.step(), r.steps().size() - 1)));
  }

  /** The moment that is shown. */
  public ReadOnlyObjectProperty<Optional<Moment>> moment() {
    return moment.getReadOnlyProperty();
  }

  /** The result that it belongs to. */
  public ReadOnlyObjectProperty<Optional<Rehearsed>> result() {
    return result.getReadOnlyProperty();
  }

  /** What the ear is drawn from. */
  public ReadOnlyObjectProperty<Optional<Seen>> seen() {
    return seen.getReadOnlyProperty();
  }

  /** Index of the moment shown in the course; 0 if there is none. */
  public int index() {
    Moment now = moment.get().orElse(null);
    List<Moment> course = result.get().map(Rehearsed::course).orElse(List.of());
    for (int i = 0; i < course.size(); i++) {
      Moment m = course.get(i);
      if (now != null && m.healed() == now.healed() && m.label().equals(now.label())) {
        return i;
      }
    }
    return 0;
  }

  /** Shows a moment by its index in the course. */
  public void show(int index) {
    List<Moment> course = result.get().map(Rehearsed::course).orElse(List.of());
    if (index >= 0 && index < course.size()) {
      Moment m = course.get(index);
      int steps = result.get().map(r -> r.steps().size()).orElse(0);
      int step = index == steps - 1 ? Integer.MAX_VALUE : index;
      place = m.healed() ? new Place(true, Integer.MAX_VALUE, m.days()) : new Place(false, step, 0);
      find();
    }
  }

  /** Shows the end of the operation, whatever comes. */
  public void end() {
    place = Place.TIED;
    find();
  }

  /** One moment on (+1) or back (−1). */
  public void step(int by) {
    show(index() + by);
  }

  /** What the colours of the ear say. */
  public ObjectProperty<Paint> paint() {
    return paint;
  }

  /** Whether the ear before the operation stands behind as a ghost. */
  public BooleanProperty ghost() {
    return ghost;
  }

  /** Whether the head is drawn. */
  public BooleanProperty head() {
    return head;
  }

  /** Whether the target is drawn. */
  public BooleanProperty target() {
    return target;
  }

  /** Whether threads are drawn. */
  public BooleanProperty threads() {
    return threads;
  }

  /** Whether the places of the steps are drawn. */
  public BooleanProperty marks() {
    return marks;
  }
}
