package auricle.viewer.viewmodel;

import auricle.viewer.scene.EarSurface;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import java.util.Arrays;

/**
 * The numbers at the two ends of a legend: from nothing to a round number that only one vertex in
 * two hundred exceeds anywhere in the course, so that colours can be compared from moment to
 * moment.
 *
 * @param high number at the upper end, in the unit of the legend
 */
public record FieldScale(double high) {
  private static final double SHARE_WITHIN = 0.995;
  private static final double[] ROUND = {1, 1.5, 2, 3, 4, 5, 6, 8, 10};

  /** The scale of a field over a result. */
  public static FieldScale of(Rehearsed result, Paint paint) {
    double most = 0;
    for (Moment m : result.course()) {
      float[] values = m.surface().fields().get(paint.field());
      if (values != null && values.length > 0) {
        float[] sorted = values.clone();
        Arrays.sort(sorted);
        most = Math.max(most, sorted[(int) (SHARE_WITHIN * (sorted.length - 1))]);
      }
    }
    return new FieldScale(roundUp(most * paint.scale()));
  }

  /** The next round number that is not below. */
  static double roundUp(double value) {
    if (!(value > 0)) {
      return 1;
    }
    double power = Math.pow(10, Math.floor(Math.log10(value)));
    for (double r : ROUND) {
      if (r * power >= value * (1 - 1e-12)) {
        return r * power;
      }
    }
    return 10 * power;
  }

  /** Numbers between 0 and 1 for the vertices of a surface; 0 where there is no such field. */
  public float[] shares(EarSurface surface, Paint paint) {
    float[] values = surface.fields().get(paint.field());
    float[] shares = new float[surface.vertexCount()];
    for (int v = 0; values != null && v < shares.length; v++) {
      shares[v] = (float) (values[v] * paint.scale() / high);
    }
    return shares;
  }
}
