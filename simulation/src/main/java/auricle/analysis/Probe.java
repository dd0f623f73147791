package auricle.analysis;

import java.util.Optional;

/**
 * A number asked of every load step. {@code name} names it in results; over several places the
 * mean, least, greatest or sum is taken.
 */
public sealed interface Probe {
  /** Place in the model file. */
  String at();

  /** Name in the results. */
  String name();

  /** Unit in which it is given, as a suffix of its column: mm, n, deg. */
  String unit();

  /** How one number is made of several. */
  enum Over {
    /** Mean, weighted by area for fields. */
    MEAN,
    /** Least. */
    LEAST,
    /** Greatest. */
    GREATEST,
    /** Sum. */
    SUM
  }

  /** Displacement along a direction, mm; without one its length. */
  record Displacement(String at, String name, Selector where, Optional<Triple> direction, Over over)
      implements Probe {
    @Override
    public String unit() {
      return "mm";
    }
  }

  /** Angle by which directors have turned about an axis, deg, whole turns counted. */
  record Rotation(String at, String name, Selector where, Triple axis, Over over) implements Probe {
    @Override
    public String unit() {
      return "deg";
    }
  }

  /** Sum of the support forces on a set along a direction, N. */
  record Reaction(String at, String name, Selector where, Triple direction) implements Probe {
    @Override
    public String unit() {
      return "n";
    }
  }

  /** Distance between the middles of two sets, mm. */
  record Distance(String at, String name, Selector from, Selector to) implements Probe {
    @Override
    public String unit() {
      return "mm";
    }
  }

  /**
   * A component of a field of the section.
   *
   * @param quantity which field
   * @param component which number of it
   * @param face height through the thickness; of no effect on section forces and moments
   * @param axis first axis of the components; none: the section's own
   */
  record Field(
      String at,
      String name,
      Selector where,
      Quantity quantity,
      Component component,
      Face face,
      Optional<MaterialAxis> axis,
      Over over)
      implements Probe {
    @Override
    public String unit() {
      return quantity.unit();
    }
  }

  /** Fields a probe may ask for. */
  enum Quantity {
    /** Strain at a face. */
    STRAIN("strain"),
    /** Stress at a face, MPa. */
    STRESS("mpa"),
    /** Membrane force per length, N/mm. */
    FORCE("n_per_mm"),
    /** Moment per length, N·mm/mm. */
    MOMENT("n"),
    /** Change of curvature, 1/mm. */
    CURVATURE("per_mm");

    private final String unit;

    Quantity(String unit) {
      this.unit = unit;
    }

    String unit() {
      return unit;
    }
  }

  /** Numbers of a symmetric tensor in the plane of the surface. */
  enum Component {
    /** Along the axis, 11. */
    ALONG,
    /** Across it, 22. */
    ACROSS,
    /** Shear, 12 (tensor). */
    SHEAR,
    /** Greater principal value. */
    MAJOR,
    /** Lesser principal value. */
    MINOR,
    /** Equivalent stress of plane stress. */
    VON_MISES
  }

  /** Heights through the thickness. */
  enum Face {
    /** The side the normal points to. */
    TOP,
    /** The middle of the section. */
    MIDDLE,
    /** The side against the normal. */
    BOTTOM
  }

  /** Total energy, mJ. */
  record Energy(String at, String name) implements Probe {
    @Override
    public String unit() {
      return "mj";
    }
  }

  /** Tension of a thread, N. */
  record Tension(String at, String name, String thread) implements Probe {
    @Override
    public String unit() {
      return "n";
    }
  }

  /** Force of a contact on the vertices it keeps out, along a direction or its length, N. */
  record ContactForce(String at, String name, String contact, Optional<Triple> direction)
      implements Probe {
    @Override
    public String unit() {
      return "n";
    }
  }

  /** Smallest gap between the faces of a contact, mm; no number while none is near. */
  record ContactGap(String at, String name, String contact) implements Probe {
    @Override
    public String unit() {
      return "mm";
    }
  }

  /** The load factor. */
  record LoadFactor(String at, String name) implements Probe {
    @Override
    public String unit() {
      return "factor";
    }
  }
}
