package auricle.measurement;

import auricle.anatomy.RestSurface;
import auricle.anatomy.ShapeParameters;

/**
 * Measures shapes at rest on the smooth surface that all meshes sample, without a mesh. Where to
 * read is chosen for one shape; for another, lengths along its profiles are off by as much as the
 * profile has grown. Safe for use by several threads.
 */
public final class RestMeasurer {
  private final SamplePlan plan;
  private final EarReadings readings;

  /**
   * @param shape the shape, or one like those to be measured
   */
  public RestMeasurer(ShapeParameters shape) {
    plan = new SamplePlan(new RestSurface(shape));
    readings = new EarReadings(plan);
  }

  /** All measurements of a shape. */
  public Measures measure(ShapeParameters shape) {
    return readings.measures(plan.restPoints(new RestSurface(shape)));
  }
}
