package auricle.viewer.viewmodel;

import auricle.measurement.Figure;
import auricle.viewer.task.Reaction;
import auricle.viewer.task.Rehearsed;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** What each dose of the plan that is shown does: asked for, and gone when the plan changes. */
public final class Reactions {
  /** Figures that bars are drawn of: distances from the head, mm. */
  public static final List<Figure> DISTANCES =
      List.of(
          Figure.HELIX_MASTOID_UPPER,
          Figure.HELIX_MASTOID_MIDDLE,
          Figure.HELIX_MASTOID_LOWER,
          Figure.LOBULE_MASTOID);

  private static final double NOTHING_MM = 0.005;

  private final Solving solving;
  private final ReadOnlyObjectWrapper<Shown> shown = new ReadOnlyObjectWrapper<>(Shown.NOTHING);

  /**
   * What there is to show.
   *
   * @param words what it is, or why there is nothing
   * @param list of the doses that do something, the strongest first
   * @param idle names of doses that move no distance by a hundredth of a millimetre
   */
  public record Shown(String words, List<Reaction> list, List<String> idle) {
    static final Shown NOTHING =
        new Shown("Not worked out for this plan yet.", List.of(), List.of());

    /** Keeps its own copies. */
    public Shown {
      list = List.copyOf(list);
      idle = List.copyOf(idle);
    }
  }

  /** Of what a solver works out. */
  public Reactions(Solving solving) {
    this.solving = solving;
    solving.result().addListener((o, was, now) -> follow(now));
    follow(solving.result().get());
  }

  private void follow(Optional<Rehearsed> now) {
    List<Reaction> all = now.map(Rehearsed::reactions).orElse(List.of());
    shown.set(all.isEmpty() ? Shown.NOTHING : of(all));
  }

  private static Shown of(List<Reaction> all) {
    List<Reaction> strong =
        all.stream()
            .filter(r -> r.most(DISTANCES) >= NOTHING_MM)
            .sorted((a, b) -> Double.compare(b.most(DISTANCES), a.most(DISTANCES)))
            .toList();
    List<String> idle =
        all.stream()
            .filter(r -> !r.changes().isEmpty() && r.most(DISTANCES) < NOTHING_MM)
            .map(r -> r.operation() + ": " + r.label())
            .toList();
    String words =
        "Rates at the end of the operation, from the stiffness at rest, for one turn of each "
            + "control; threads keep their lengths. Tensions are not among them.";
    return new Shown(words + without(all), strong, idle);
  }

  private static String without(List<Reaction> all) {
    String names =
        all.stream()
            .filter(r -> r.changes().isEmpty())
            .map(r -> r.operation() + ": " + r.label())
            .collect(Collectors.joining(", "));
    return names.isEmpty()
        ? ""
        : " No rate here, since more and less of it act differently, as where a thread goes slack: "
            + names
            + ".";
  }

  /** What there is to show. */
  public ReadOnlyObjectProperty<Shown> shown() {
    return shown.getReadOnlyProperty();
  }

  /** Works the reactions of the plan out. */
  public void work() {
    solving.ask(new Solving.Extra.Reactions());
  }
}
