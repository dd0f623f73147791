package auricle.assessment;

import auricle.measurement.Figure;
import java.util.Locale;
import java.util.Optional;

/**
 * A measurement on both ears.
 *
 * @param figure which
 * @param right value on the right ear, in its unit
 * @param left value on the left ear
 * @param limit largest difference accepted
 */
public record SideDifference(Figure figure, double right, double left, Limit limit) {
  /** Right less left, in the unit of the figure. */
  public double difference() {
    return right - left;
  }

  /** What to say of it; nothing within the limit. */
  public Optional<Caution> caution() {
    String words =
        String.format(
            Locale.ROOT,
            "The two ears differ: %s %.1f mm right, %.1f mm left, more than %.1f mm apart",
            figure.label(),
            right,
            left,
            limit.value());
    return within()
        ? Optional.empty()
        : Optional.of(
            new Caution(
                CautionKind.SIDES_DIFFER, words, Math.abs(difference()), limit, figure.key()));
  }

  /** Whether the two are within the limit. */
  public boolean within() {
    return Math.abs(difference()) <= limit.value();
  }
}
