package auricle.anatomy;

import org.jspecify.annotations.Nullable;

/**
 * The smooth mid-surface at rest that every mesh level samples, by place around and across (see
 * {@link Chart}); for what needs many shapes and no mesh.
 */
public final class RestSurface {
  private final AuricleSurface surface;

  /**
   * @param shape its shape
   */
  public RestSurface(ShapeParameters shape) {
    surface = new AuricleSurface(shape);
  }

  /** The profile at a place. */
  public Profile profile(Place place) {
    return new Profile(surface.section(place.station));
  }

  /** A place around at which many shapes are read. */
  public static final class Place {
    private final PlanStation station;

    /**
     * @param around 0 … {@link PlanForm#PERIOD}
     */
    public Place(double around) {
      station = PlanForm.shipped().at(around);
    }

    /** The place around. */
    public double around() {
      return station.around();
    }
  }

  /** The line from the middle of the floor to the free edge at one place around. */
  public static final class Profile {
    private final Section section;
    private @Nullable ProfileLengths lengths;

    private Profile(Section section) {
      this.section = section;
    }

    /** The point at a place across, 0 … 1, in the ear frame, mm. */
    public double[] point(double across) {
      return section.point(across);
    }

    /**
     * The place across at an arc length from the fold line; held at the foot of the wall and at the
     * free edge.
     *
     * @param offset_mm positive towards the rim, negative towards the bowl
     */
    public double acrossFromFold(double offset_mm) {
      if (lengths == null) {
        lengths = new ProfileLengths(section);
      }
      return lengths.acrossAt(offset_mm);
    }
  }
}
