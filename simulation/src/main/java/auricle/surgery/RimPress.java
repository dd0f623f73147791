package auricle.surgery;

import auricle.anatomy.Auricle;
import auricle.anatomy.Chart;
import auricle.energy.FixedPoint;
import auricle.energy.MaterialPoint;
import auricle.equilibrium.StepMonitor;
import auricle.material.Tissue;
import java.util.List;

/**
 * A press on the rim towards the head, before anything is done: how much force it takes to move it
 * so far. The press is a pull by a stiff thread to a point so far beyond the head that its
 * direction does not change.
 */
public final class RimPress {
  private static final double FAR_MM = 1e4;
  private static final double STIFF_N = 1e7;

  private RimPress() {}

  /**
   * Force on the rim at a level, N; NaN if the ear finds no rest under it.
   *
   * @param level_percent level on the rim, % of the height of the ear
   * @param depth_mm how far the rim goes towards the head, mm
   */
  public static double force_n(
      Auricle auricle, Tissue tissue, double level_percent, double depth_mm) {
    EarPlaces places = new EarPlaces(auricle);
    Chart chart = auricle.chart();
    double around = chart.aroundOfRimAtHeight(level_percent);
    MaterialPoint rim = places.point(chart.place(around, chart.acrossOfRim(around)), 0);
    double[] x = rim.position(places.restUnknowns());
    BodyThread press =
        BodyThread.pulling(
            "press",
            Purpose.BOLSTER,
            List.of(rim, new FixedPoint(x[0] - FAR_MM, x[1], x[2])),
            false,
            STIFF_N);
    EarBody body = EarBody.untouched(auricle, tissue, press);
    Settled settled = body.shell().tie(press, FAR_MM - depth_mm, Solving.watched(StepMonitor.NONE));
    return settled.converged() ? press.thread().tension(body.unknowns()) : Double.NaN;
  }
}
