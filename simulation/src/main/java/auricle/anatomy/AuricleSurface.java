package auricle.anatomy;

import auricle.geometry.Vectors;

/**
 * The smooth mid-surface over (around, across): point and normal. Around is periodic ({@link
 * PlanForm#PERIOD}); see {@link Section} for across.
 */
final class AuricleSurface {
  private static final double STEP = 1e-4;
  private final PlanForm plan = PlanForm.shipped();
  private final Floor floor = new Floor(plan);
  private final ShapeParameters shape;
  private final LateralView view;

  AuricleSurface(ShapeParameters shape) {
    this.shape = shape;
    this.view = new LateralView(shape);
  }

  /** The section at a place around. */
  Section section(double around) {
    return section(plan.at(around));
  }

  /** The section at a place whose plan form has been read. */
  Section section(PlanStation station) {
    return new Section(floor, view, new LocalForm(station, shape, view.size()));
  }

  /** A point of the floor, across at most {@link Section#FOOT}. */
  FloorSpot floorSpot(double around, double across) {
    LocalForm form = new LocalForm(plan.at(around), shape, view.size());
    double share = across / Section.FOOT;
    return new FloorSpot(view, floor, share * form.footU(), share * form.plain(Form.FOOT_V));
  }

  /** A section with its two close neighbours, for normals. */
  Slice slice(double around) {
    return new Slice(section(around), section(around - STEP), section(around + STEP));
  }

  /** A section with its neighbours a small step before and after it. */
  record Slice(Section section, Section before, Section after) {
    /** Change of the point with around at the same place across, mm. */
    double[] alongAround(double across) {
      double[] change = Vectors.subtract(after.point(across), before.point(across));
      return Vectors.scale(1 / (2 * STEP), change);
    }

    /** The unit normal, towards the visible face, from the foot outwards. */
    double[] normal(double across) {
      return Vectors.unit(Vectors.cross(section.direction(across), alongAround(across)));
    }
  }
}
