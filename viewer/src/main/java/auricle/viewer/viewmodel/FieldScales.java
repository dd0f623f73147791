package auricle.viewer.viewmodel;

import auricle.viewer.task.Rehearsed;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** The scales of the result that is drawn, each found when it is first asked for. */
public final class FieldScales {
  private final Map<Paint, FieldScale> known = new EnumMap<>(Paint.class);
  private Optional<Rehearsed> result = Optional.empty();

  /** The scale of a field over a result. */
  public FieldScale of(Rehearsed drawn, Paint paint) {
    if (result.filter(r -> r == drawn).isEmpty()) {
      result = Optional.of(drawn);
      known.clear();
    }
    return known.computeIfAbsent(paint, p -> FieldScale.of(drawn, p));
  }
}
