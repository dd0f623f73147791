package auricle.anatomy;

import auricle.geometry.Vectors;

/**
 * The smooth mid-surface over (around, across): point and normal. Around is periodic ({@link
 * PlanForm#PERIOD}); see {@link Section} for across.
 */
final class AuricleSurface {
  private static final double STEP = 1e-4;
  private static final double BESIDE_MIDDLE = 1e-3;
  private final PlanForm plan = PlanForm.shipped();
  private final Floor floor = new Floor(plan);
  private final ShapeParameters shape;

  AuricleSurface(ShapeParameters shape) {
    this.shape = shape;
  }

  /** The section at a place around. */
  Section section(double around) {
    return new Section(plan, floor, shape, around);
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

    /** The unit normal, towards the visible face. */
    double[] normal(double across) {
      // at the middle of the floor all sections meet: take the normal beside it
      double at = Math.max(across, BESIDE_MIDDLE);
      return Vectors.unit(Vectors.cross(section.direction(at), alongAround(at)));
    }
  }
}
