package auricle.rehearsal;

import auricle.healing.EarState;
import auricle.healing.Timeline;
import auricle.measurement.EarMeasurer;
import auricle.mesh.Directors;
import auricle.mesh.RestShape;
import auricle.surgery.EarBody;
import auricle.surgery.ShutShell;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** The ear at the moments of a timeline, with its fields. */
final class YearShapes {
  private final EarBody body;
  private final ShutShell tied;
  private final ShapeReader reader;

  private YearShapes(EarBody body, EarMeasurer measurer) {
    this.body = body;
    tied = body.shell().shut();
    reader = new ShapeReader(body, measurer);
  }

  /**
   * Shapes in the order of the moments; fewer if it is stopped.
   *
   * @param body at rest after the plan, as the timeline was followed from; left as it was
   * @param line followed with the shapes in which the wall is free of stress
   * @param stopped asked before each
   */
  static List<DeformedEar> of(
      EarBody body, EarMeasurer measurer, Timeline line, BooleanSupplier stopped) {
    YearShapes shapes = new YearShapes(body, measurer);
    Directors directors = body.shell().directors();
    double[] frames = directors.save();
    try {
      return line.moments().stream()
          .takeWhile(moment -> !stopped.getAsBoolean())
          .map(moment -> shapes.at(moment.state()))
          .toList();
    } finally {
      directors.restore(frames);
    }
  }

  private DeformedEar at(EarState state) {
    body.shell().directors().restore(state.frames());
    double[] u = state.unknowns();
    Optional<RestShape> unstressed = state.unstressed();
    WallStrains strains = WallStrains.of(body, tied, unstressed.orElseThrow(), u);
    return reader.read(u, strains, body.unknowns());
  }
}
