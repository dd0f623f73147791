package auricle.measurement;

import auricle.anatomy.Auricle;
import auricle.anatomy.RestSurface;
import java.util.List;

/**
 * Measures an ear from the coordinates of its mesh. What to read where is found once; a measurement
 * then takes a fraction of a millisecond. Safe for use by several threads.
 *
 * <p>All distances are those of the mid-surface, from the mastoid plane x = 0; a calliper on the
 * skin reads half the ear's thickness more at the rim, the same before and after.
 */
public final class EarMeasurer {
  private final SpotReader reader;
  private final EarReadings readings;

  /**
   * @param auricle the ear at rest
   */
  public EarMeasurer(Auricle auricle) {
    RestSurface surface = new RestSurface(auricle.shape());
    SamplePlan plan = new SamplePlan(surface);
    readings = new EarReadings(plan);
    reader =
        new SpotReader(plan, auricle.chart(), auricle.mesh().positions(), plan.restPoints(surface));
  }

  /**
   * All measurements of the ear in a state.
   *
   * @param unknowns x, y, z of each vertex of the auricle's mesh, mm; the tilts that may follow are
   *     not read
   */
  public Measures measure(double[] unknowns) {
    return readings.measures(reader.points(unknowns));
  }

  /** The lines along which the angles are read in a state. */
  public List<SightLine> sightLines(double[] unknowns) {
    return readings.sightLines(reader.points(unknowns));
  }
}
