package auricle.measurement;

import auricle.anatomy.Chart;
import auricle.anatomy.Level;
import java.util.ArrayList;
import java.util.List;

/**
 * Every measurement, read from the points of a {@link SamplePlan}. Smooth in the points but for the
 * smallest radii and the counts of kinks.
 */
final class EarReadings {
  private static final double SHOW_FROM = 35;
  private static final double SHOW_TO = 90;
  private static final double SHOW_STEP = 5;
  private static final double CANAL = Chart.FOOT * 2 / 3;
  private final HelixLine helix;
  private final Ridge antihelix;
  private final SampleBlock canal;
  private final Ridge front;
  private final FoldAngle foldUpper;
  private final FoldAngle foldMiddle;
  private final FoldLine foldLine;
  private final BowlDepth bowl;
  private final Sulcus sulcus;

  EarReadings(SamplePlan plan) {
    helix = new HelixLine(plan);
    antihelix = new Ridge(plan.even(new Stations(0.22, 0.95, 60), 0.42, 0.6, 10), 0, 1);
    canal = plan.even(new Stations(1.06, 1.22, 17), CANAL, CANAL, 1);
    front = new Ridge(plan.even(new Stations(1.11, 1.25, 15), Chart.FOLD, Chart.FOLD, 1), 1, 1);
    foldUpper = FoldAngle.upper(plan);
    foldMiddle = FoldAngle.middle(plan);
    foldLine = new FoldLine(plan);
    bowl = new BowlDepth(plan);
    sulcus = new Sulcus(plan);
  }

  /** All measurements. */
  Measures measures(double[] p) {
    EarHeight height = helix.height(p);
    double[] rim = helix.line(p);
    double[] crest = antihelix.line(p);
    return new Measures(
        HeightFit.at(rim, height.z_mm(Level.UPPER))[0],
        HeightFit.at(rim, height.z_mm(Level.MIDDLE))[0],
        HeightFit.at(rim, height.z_mm(Level.LOWER))[0],
        HeightFit.at(rim, height.z_mm(Level.LOBULE))[0],
        foldUpper.angle_deg(p, height.z_mm(Level.UPPER)),
        foldMiddle.angle_deg(p, height.z_mm(Level.MIDDLE)),
        auriculocephalic_deg(p, rim, height.z_mm(Level.MIDDLE)),
        bowl.depth_mm(p, crest, height.z_mm(Level.MIDDLE)),
        HelixShow.at(rim, crest, height.z_mm(Level.UPPER)),
        HelixShow.at(rim, crest, height.z_mm(Level.MIDDLE)),
        HelixShow.hiddenLength_mm(rim, crest, height.z_mm(SHOW_FROM), height.z_mm(SHOW_TO)),
        sulcus.depth_mm(p, height.z_mm(Level.MIDDLE)),
        showAlongHeight(rim, crest, height),
        helix.evenness(rim, height),
        foldLine.evenness(p, height),
        height.height_mm(),
        front.extreme(p) - helix.back_mm(p));
  }

  /**
   * The auriculocephalic angle at mid-height: between the mastoid plane and the line from the
   * opening of the ear canal, about which the ear stands out, to the most lateral point of the rim,
   * both in the horizontal cut, deg. The opening is taken two thirds of the way from the middle of
   * the bowl's floor to its front margin: our own convention, with which an ear 17 mm from the
   * mastoid has the angle of normal ears (da Silva Freitas 2008, who cut their moulds at
   * mid-height).
   */
  private double auriculocephalic_deg(double[] p, double[] rim, double z) {
    double[] from = canal(p, z);
    double[] to = HeightFit.at(rim, z);
    return Math.toDegrees(Math.atan2(to[0] - from[0], from[1] - to[1]));
  }

  private double[] canal(double[] p, double z) {
    double[] base = new double[3 * canal.stations()];
    System.arraycopy(p, canal.at(0, 0), base, 0, base.length);
    return HeightFit.at(base, z);
  }

  /** The lines along which the angles are read. */
  List<SightLine> sightLines(double[] p) {
    EarHeight height = helix.height(p);
    double middle = height.z_mm(Level.MIDDLE);
    List<SightLine> lines = new ArrayList<>();
    lines.addAll(foldUpper.legs(p, Level.UPPER, height.z_mm(Level.UPPER)));
    lines.addAll(foldMiddle.legs(p, Level.MIDDLE, middle));
    double[] rim = HeightFit.at(helix.line(p), middle);
    lines.add(SightLine.of("auriculocephalic", canal(p, middle), rim));
    return lines;
  }

  private static List<HelicalShow> showAlongHeight(double[] rim, double[] crest, EarHeight height) {
    List<HelicalShow> show = new ArrayList<>();
    for (double level = SHOW_FROM; level <= SHOW_TO; level += SHOW_STEP) {
      show.add(new HelicalShow(level, HelixShow.at(rim, crest, height.z_mm(level))));
    }
    return show;
  }
}
