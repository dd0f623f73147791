package auricle.anatomy;

/**
 * The auricle at one place around: from the middle of the floor along a straight line to the foot
 * of the wall, then along the profile over its trace, a circular arc in the lateral view.
 *
 * <p>Across runs from 0 at the middle of the floor over {@link #FOOT} and {@link #FOLD} and {@link
 * #SCAPHA_END} to 1 at the free edge, even in arc length between them.
 */
final class Section {
  static final double FOOT = 0.2;
  static final double FOLD = 0.5;
  static final double SCAPHA_END = 0.8;

  private final LateralView view;
  private final Floor floor;
  private final double around;
  private final double footU;
  private final double footV;
  private final double heading;
  private final double bend;
  private final EarProfile profile;

  Section(Floor floor, LateralView view, LocalForm form) {
    this.view = view;
    this.floor = floor;
    this.around = form.around();
    footU = form.footU();
    footV = form.plain(Form.FOOT_V);
    heading = Math.toRadians(form.plain(Form.OUT_DEG));
    bend = (Math.toRadians(form.plain(Form.IN_DEG)) - heading) / form.plain(Form.REACH_MM);
    ProfilePoint foot =
        new ProfilePoint(0, floor.height(footU, footV), floor.slope(footU, footV, heading));
    profile = new EarProfile(form, foot);
  }

  double around() {
    return around;
  }

  EarProfile profile() {
    return profile;
  }

  /** Foot of the wall in the lateral view, forwards and upwards, mm at normal size. */
  double[] foot() {
    return new double[] {footU, footV};
  }

  /** Arc length from the foot (at normal size) at a place across beyond the foot. */
  double lengthAt(double across) {
    double fold = profile.fold();
    double end = profile.scaphaEnd();
    if (across <= FOLD) {
      return fold * (across - FOOT) / (FOLD - FOOT);
    }
    if (across <= SCAPHA_END) {
      return fold + (end - fold) * (across - FOLD) / (SCAPHA_END - FOLD);
    }
    return end + (profile.length() - end) * (across - SCAPHA_END) / (1 - SCAPHA_END);
  }

  /** The place across at an arc length from the foot (at normal size), FOOT … 1. */
  double acrossAt(double length) {
    double fold = profile.fold();
    double end = profile.scaphaEnd();
    double across;
    if (length <= fold) {
      across = FOOT + (FOLD - FOOT) * length / fold;
    } else if (length <= end) {
      across = FOLD + (SCAPHA_END - FOLD) * (length - fold) / (end - fold);
    } else {
      across = SCAPHA_END + (1 - SCAPHA_END) * (length - end) / (profile.length() - end);
    }
    return Math.min(1, Math.max(FOOT, across));
  }

  /** Height of the floor's ridge at a place across within the foot, mm. */
  double ridge(double across) {
    return floor.height(footU * across / FOOT, footV * across / FOOT) - Floor.BED;
  }

  /** The point at a place across, in the ear frame, mm. */
  double[] point(double across) {
    if (across <= FOOT) {
      double u = footU * across / FOOT;
      double v = footV * across / FOOT;
      return view.point(u, v, floor.height(u, v));
    }
    ProfilePoint p = profile.at(lengthAt(across));
    double mean = heading + bend * p.out() / 2;
    double turned = bend * p.out() / 2;
    double chord = p.out() * (Math.abs(turned) < 1e-9 ? 1 : Math.sin(turned) / turned);
    return view.point(
        footU + chord * Math.cos(mean), footV + chord * Math.sin(mean), Clearance.of(p.lateral()));
  }

  /**
   * Direction along the profile, outwards from the foot on, in the ear frame; not of unit length.
   */
  double[] direction(double across) {
    ProfilePoint p = profile.at(lengthAt(across));
    double h = heading + bend * p.out();
    double flat = Math.cos(p.slope());
    double rise = Math.sin(p.slope()) * Clearance.slope(p.lateral());
    return view.vector(flat * Math.cos(h), flat * Math.sin(h), rise);
  }
}
