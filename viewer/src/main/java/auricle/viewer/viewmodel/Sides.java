package auricle.viewer.viewmodel;

import auricle.anatomy.Level;
import auricle.anatomy.Side;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Both ears at one moment, for judging them against each other.
 *
 * @param right ear
 * @param left ear
 * @param words what is seen on either side
 * @param most largest difference that is aimed at, mm
 */
public record Sides(Optional<Moment> right, Optional<Moment> left, String words, double most) {
  /**
   * One level on both sides.
   *
   * @param label of the level
   * @param right distance from the head, mm; NaN if not known
   * @param left distance from the head, mm; NaN if not known
   * @param within whether the difference is no larger than what is aimed at
   */
  public record Row(String label, double right, double left, boolean within) {
    /** Right less left, mm. */
    public double difference() {
      return right - left;
    }
  }

  /**
   * The ear that is shown beside the other one of the pair at the same time; a scenario of one ear
   * has its mirror image before the operation on the other side.
   */
  public static Sides of(Rehearsed shown, Moment now, Optional<Rehearsed> other, boolean pair) {
    boolean isLeft = shown.ear().ear().side() == Side.LEFT;
    Optional<Moment> beside =
        pair ? other.flatMap(r -> same(r, shown, now)) : Optional.of(shown.before());
    String mine = (isLeft ? "Left ear: " : "Right ear: ") + now.label() + ". ";
    String theirs =
        pair
            ? beside.map(m -> "The other: " + m.label() + ".").orElse("The other is worked out …")
            : "The scenario has one ear: the other side is its mirror image before the operation.";
    double most = shown.ear().target().sideDifference_mm();
    return new Sides(
        isLeft ? beside : Optional.of(now),
        isLeft ? Optional.of(now) : beside,
        mine + theirs,
        most);
  }

  /**
   * The moment of the other ear that goes with one of this: before, after the step of the same name
   * or else of the same number, at its end, or as late; none while that is not worked out.
   */
  private static Optional<Moment> same(Rehearsed other, Rehearsed shown, Moment now) {
    if (now.healed()) {
      return other.times().stream()
          .min(Comparator.comparingDouble(m -> Math.abs(m.days() - now.days())));
    }
    if (now.equals(shown.before())) {
      return Optional.of(other.before());
    }
    boolean end = now.equals(shown.tied()) && !shown.onTheWay();
    if (other.reach() == Rehearsed.Reach.BEFORE || (end && other.onTheWay())) {
      return Optional.empty();
    }
    return Optional.of(end ? other.tied() : step(other, shown, now));
  }

  private static Moment step(Rehearsed other, Rehearsed shown, Moment now) {
    int number = Math.min(shown.steps().indexOf(now), other.steps().size() - 1);
    return other.steps().stream()
        .filter(m -> m.label().equals(now.label()))
        .findFirst()
        .orElse(other.steps().get(number));
  }

  /** The levels, upper first. */
  public List<Row> rows() {
    return java.util.Arrays.stream(Level.values()).map(this::row).toList();
  }

  private Row row(Level level) {
    double r =
        right.map(m -> Balance.distance(level).applyAsDouble(m.measures())).orElse(Double.NaN);
    double l =
        left.map(m -> Balance.distance(level).applyAsDouble(m.measures())).orElse(Double.NaN);
    return new Row(Balance.label(level), r, l, Math.abs(r - l) <= most);
  }
}
