package auricle.anatomy;

import java.util.Locale;

/**
 * The shape parameters of the auricle, each with its bounds: those of usual ears, and for some
 * wider ones. Any one of them may stand at either bound by itself; of combinations drawn at random
 * over all bounds, far from any ear, a few turn a triangle over. Values of the normal shape are our
 * own design after the proportions of Bozkır 2006, Tolleth 1978, da Silva Freitas 2008 and
 * Brockhoff et al.; see {@code plan-form.csv}.
 *
 * <p>Fold and lean are directions in a profile: the wall of the bowl rises at lean + (180 deg −
 * fold)/2 and the scapha goes on at lean − (180 deg − fold)/2 against the mastoid plane. So lean
 * moves the projection at one fold angle.
 */
public enum ShapeKnob {
  /** Length of the long axis in lateral view, mm. */
  HEIGHT(44, 80, 62),
  /** Breadth across it, mm. */
  WIDTH(22, 46, 33),
  /** Height of the antihelix above the floor of the bowl, mm. */
  BOWL_DEPTH(5, 23, 10.5),
  /** Angle between wall and scapha, upper third, deg. */
  FOLD_UPPER(70, 155, 107),
  /** The same, middle third, deg. */
  FOLD_MIDDLE(70, 155, 107),
  /** The same, lower third, deg. */
  FOLD_LOWER(70, 155, 107),
  /** Direction halfway between wall and scapha, upper third, deg; moves the projection there. */
  LEAN_UPPER(15, 80, 38),
  /** The same, middle third, deg. */
  LEAN_MIDDLE(15, 80, 43),
  /** The same, lower third, deg. */
  LEAN_LOWER(15, 80, 46),
  /** Direction of the lobule away from the head, deg; 0 hangs parallel to it. */
  LOBULE_SLOPE(-20, 50, 0),
  /** Breadth of the scapha, as a multiple of the normal one. */
  SCAPHA_BREADTH(0.7, 1.7, 1),
  /** Radius of the antihelical fold, mm. */
  FOLD_RADIUS(2, 6, 3.5),
  /** Turn of the helix at the top and back, deg. */
  HELIX_CURL(90, 210, 180),
  /** Breadth of the rolled helix, as a multiple of the normal one. */
  HELIX_BREADTH(0.7, 1.3, 1, 0.5, 1.5),
  /** Foot of the front wall of the bowl forwards of its normal place, mm. */
  FRONT_BASE(-2, 3, 0),
  /**
   * Breadth of the bowl's wall in lateral view, as a multiple of the normal one; a steep wall has
   * little.
   */
  WALL_REACH(0.8, 1.6, 1, 0.5, 1.9),
  /**
   * Height of the antihelix above the floor in the upper third, as a multiple of that elsewhere.
   */
  CREST_UPPER(0.65, 1.4, 1),
  /** Turn of the long axis backwards, deg. */
  INCLINATION(0, 35, 20);

  private final double low;
  private final double high;
  private final double normal;
  private final double least;
  private final double most;

  ShapeKnob(double low, double high, double normal) {
    this(low, high, normal, low, high);
  }

  ShapeKnob(double low, double high, double normal, double least, double most) {
    this.low = low;
    this.high = high;
    this.normal = normal;
    this.least = least;
    this.most = most;
  }

  /** Least value of usual ears, in the knob's own unit. */
  public double low() {
    return low;
  }

  /** Greatest value of usual ears, in the knob's own unit. */
  public double high() {
    return high;
  }

  /**
   * Least value that a shape may have, for ears that no usual one is like; at most {@link #low}.
   */
  public double least() {
    return least;
  }

  /** Greatest value that a shape may have; at least {@link #high}. */
  public double most() {
    return most;
  }

  /** Value of the normal adult shape, in the knob's own unit. */
  public double normal() {
    return normal;
  }

  /** The name in files, lower case. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
