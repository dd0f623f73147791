package auricle.measurement;

import auricle.anatomy.Chart;
import auricle.anatomy.Level;
import java.util.List;

/**
 * The scapha-conchal angle at one level: between the straight backs of the bowl's wall and of the
 * scapha, measured through the posterior side, in the cut across the fold where the fold line
 * stands at that height.
 *
 * <p>The cut is the plane through the lateral direction and the line, in side view, from the middle
 * of the wall's leg to the middle of the scapha's. Stations count by the height of their point of
 * the fold line, exp(−(z_k − z)²/(2 σ²)), σ = 1.5 mm. deg, 0 … 360; 180 is no fold, less is a fold
 * that is convex forwards, as it should be.
 *
 * <p>The scapha's leg is the middle of its breadth, from 27 to 80 % of the way from the fold line
 * to the helix (2.5 to 7 mm in a normal ear). At the middle level the wall's leg reaches from 43 to
 * 80 % of the way from the foot of the wall to the fold line (7 to 2.5 mm from it); at the upper
 * level triangular fossa and inferior crus lie there, and the leg is the lower part of the wall
 * that rises from the floor, 10 to 43 %. (da Silva Freitas 2008, doi 10.1007/s00266-008-9160-8,
 * read the angle on the posterior face of moulds cut half-way between mid-height and top.)
 */
final class FoldAngle {
  private static final double SPREAD = 1.5;
  private static final int PLACES = 7;
  private static final double FOOT_SIDE = 0.23;
  private static final double MIDDLE = 0.33;
  private static final double FOLD_SIDE = 0.44;
  private final SampleBlock crest;
  private final Leg wall;
  private final Leg scapha;

  private FoldAngle(SampleBlock crest, Leg wall, Leg scapha) {
    this.crest = crest;
    this.wall = wall;
    this.scapha = scapha;
  }

  /** The angle at the upper level. */
  static FoldAngle upper(SamplePlan plan) {
    return of(plan, new Stations(0.3, 0.5, 17), FOOT_SIDE, MIDDLE);
  }

  /** The angle at the middle level. */
  static FoldAngle middle(SamplePlan plan) {
    return of(plan, new Stations(0.48, 0.72, 17), MIDDLE, FOLD_SIDE);
  }

  private static FoldAngle of(SamplePlan plan, Stations stations, double from, double to) {
    double breadth = Chart.SCAPHA_END - Chart.FOLD;
    return new FoldAngle(
        crest(plan, stations),
        new Leg(plan.even(stations, from, to, PLACES)),
        new Leg(
            plan.even(stations, Chart.FOLD + 0.27 * breadth, Chart.FOLD + 0.8 * breadth, PLACES)));
  }

  private static SampleBlock crest(SamplePlan plan, Stations stations) {
    return plan.even(stations, Chart.FOLD, Chart.FOLD, 1);
  }

  /**
   * The angle, deg.
   *
   * @param z height of the level, mm
   */
  double angle_deg(double[] points, double z) {
    double[] along = new double[3];
    double[] outwards = new double[3];
    double[] across = new double[3];
    double nearest = nearest(points, z);
    for (int k = 0; k < crest.stations(); k++) {
      double w = weight(points, k, z, nearest);
      wall.addDirection(points, k, w, along);
      scapha.addDirection(points, k, w, outwards);
      scapha.addMiddle(points, k, w, across);
      wall.addMiddle(points, k, -w, across);
    }
    double deg = Math.toDegrees(slope(along, across) - slope(outwards, across));
    return turned(180 - deg);
  }

  /**
   * The legs as they are read, the wall's and the scapha's, each a mean of the stations by their
   * weights.
   *
   * @param level of the angle, for the names
   * @param z height of the level, mm
   */
  List<SightLine> legs(double[] points, Level level, double z) {
    return List.of(
        leg("wall_leg_" + level.key(), wall, points, z),
        leg("scapha_leg_" + level.key(), scapha, points, z));
  }

  private SightLine leg(String name, Leg leg, double[] points, double z) {
    double[] first = new double[3];
    double[] last = new double[3];
    double nearest = nearest(points, z);
    double all = 0;
    for (int k = 0; k < crest.stations(); k++) {
      all += weight(points, k, z, nearest);
    }
    for (int k = 0; k < crest.stations(); k++) {
      leg.addEnds(points, k, weight(points, k, z, nearest) / all, first, last);
    }
    return SightLine.of(name, first, last);
  }

  private double weight(double[] points, int station, double z, double nearest) {
    double d = points[crest.at(station, 0) + 2] - z;
    return Math.exp((nearest - d * d) / (2 * SPREAD * SPREAD));
  }

  private double nearest(double[] points, double z) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int k = 0; k < crest.stations(); k++) {
      double d = points[crest.at(k, 0) + 2] - z;
      nearest = Math.min(nearest, d * d);
    }
    return nearest;
  }

  /** Rise of a direction from the mastoid plane in the cut, rad. */
  private static double slope(double[] direction, double[] across) {
    double length = Math.hypot(across[1], across[2]);
    double flat = (direction[1] * across[1] + direction[2] * across[2]) / length;
    return Math.atan2(direction[0], flat);
  }

  private static double turned(double deg) {
    return deg - 360 * Math.floor(deg / 360);
  }
}
