package auricle.anatomy;

import static java.lang.Math.toRadians;

/**
 * What shape the profile has at one place around: the plan form with the shape knobs laid over it.
 * Lengths are those of an auricle of normal size; {@link LateralView} brings them to size.
 */
final class LocalForm {
  private static final double FRONT_FROM = 1.045;
  private static final double FRONT_TO = 1.16;
  private static final double FRONT_FADE = 0.07;
  private static final double FRONT_GIVES = 0.8;
  private final PlanStation station;
  private final ShapeParameters shape;
  private final double size;
  private final double around;

  /**
   * @param size the auricle's, as a multiple of the normal one
   */
  LocalForm(PlanStation station, ShapeParameters shape, double size) {
    this.station = station;
    this.shape = shape;
    this.size = size;
    this.around = station.around();
  }

  double around() {
    return around;
  }

  /** A column of the plan form as it stands. */
  double plain(Form column) {
    return station.value(column);
  }

  private double excess(ShapeKnob knob) {
    return shape.value(knob) - knob.normal();
  }

  private double share(Form column) {
    return Math.max(0, plain(column));
  }

  /** Normal value plus what the knobs of the thirds add, each by its share. */
  private double byThirds(Form base, ShapeKnob upper, ShapeKnob middle, ShapeKnob lower) {
    return plain(base)
        + share(Form.UPPER) * excess(upper)
        + share(Form.MIDDLE) * excess(middle)
        + share(Form.LOWER) * excess(lower);
  }

  private double frontBase() {
    double share =
        Steps.rise((around - FRONT_FROM) / FRONT_FADE)
            * Steps.fall((around - FRONT_TO) / FRONT_FADE);
    return share * excess(ShapeKnob.FRONT_BASE);
  }

  /** Foot of the wall in the lateral view, forwards, mm. */
  double footU() {
    return plain(Form.FOOT_U) + frontBase();
  }

  private double lobule() {
    return share(Form.LOBULE) * excess(ShapeKnob.LOBULE_SLOPE);
  }

  /** Turn of the fold from wall to scapha, rad; positive turns outwards. */
  double foldTurn() {
    double fold =
        byThirds(Form.FOLD_DEG, ShapeKnob.FOLD_UPPER, ShapeKnob.FOLD_MIDDLE, ShapeKnob.FOLD_LOWER);
    return toRadians(180 - fold);
  }

  private double lean() {
    return toRadians(
        byThirds(Form.LEAN_DEG, ShapeKnob.LEAN_UPPER, ShapeKnob.LEAN_MIDDLE, ShapeKnob.LEAN_LOWER));
  }

  /** Slope of the wall where it reaches the fold, rad. */
  double wallSlope() {
    return lean() + foldTurn() / 2;
  }

  /** Slope of the line of the scapha, or of the lobule, rad. */
  double scaphaSlope() {
    return lean() - foldTurn() / 2 + toRadians(lobule());
  }

  /** Height of the fold above the floor's bed, mm. */
  double depth() {
    double bowl = shape.value(ShapeKnob.BOWL_DEPTH) / ShapeKnob.BOWL_DEPTH.normal();
    double upper = 1 + share(Form.UPPER) * (shape.value(ShapeKnob.CREST_UPPER) - 1);
    return plain(Form.DEPTH_MM) * bowl * upper / size;
  }

  /** Breadth of wall and fossa from foot to fold, forwards to backwards in lateral view, mm. */
  double crest() {
    double thirds = share(Form.UPPER) + share(Form.MIDDLE) + share(Form.LOWER);
    double reach = 1 + Math.min(1, thirds) * (shape.value(ShapeKnob.WALL_REACH) - 1);
    return plain(Form.CREST_MM) * reach;
  }

  /** Radius of the fold, mm, held small in a shallow bowl. */
  double foldRadius() {
    double radius = plain(Form.ROUND) * shape.value(ShapeKnob.FOLD_RADIUS) / size;
    return Math.min(radius, 0.4 * Math.min(depth(), crest()) + 0.6);
  }

  /** Length of the scapha's line, mm. */
  double flat() {
    double thirds = share(Form.UPPER) + share(Form.MIDDLE) + share(Form.LOWER);
    double breadth = 1 + thirds * (shape.value(ShapeKnob.SCAPHA_BREADTH) - 1);
    return plain(Form.FLAT_MM) * breadth - FRONT_GIVES * frontBase();
  }

  /** Half the turn of the scapha's hollow, rad. */
  double sag() {
    return toRadians(plain(Form.SAG_DEG));
  }

  /** Length of the helix's roll, mm. */
  double helix() {
    return plain(Form.HELIX_MM) * shape.value(ShapeKnob.HELIX_BREADTH);
  }

  /** Turn of the helix, rad. */
  double curl() {
    double share = shape.value(ShapeKnob.HELIX_CURL) / ShapeKnob.HELIX_CURL.normal();
    return toRadians(plain(Form.CURL_DEG) * share);
  }
}
