package auricle.analysis;

import auricle.geometry.Vectors;
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

  /** How it is read off a state; a finding where what it asks for is not there. */
  Reading reading(ProbeSite site);

  /** Displacement along a direction, mm; without one its length. */
  record Displacement(String at, String name, Selector where, Optional<Triple> direction, Over over)
      implements Probe {
    @Override
    public String unit() {
      return "mm";
    }

    @Override
    public Reading reading(ProbeSite site) {
      int[] vertices = site.vertices(where);
      direction.ifPresent(d -> site.unit(at + "/direction", d));
      return view ->
          over.of(vertices, v -> ProbeSite.along(direction, ProbeSite.displacement(view, v)));
    }
  }

  /** Angle by which directors have turned about an axis, deg, whole turns counted. */
  record Rotation(String at, String name, Selector where, Triple axis, Over over) implements Probe {
    @Override
    public String unit() {
      return "deg";
    }

    @Override
    public Reading reading(ProbeSite site) {
      int[] vertices = site.vertices(where);
      site.follow(name, vertices, site.unit(at + "/axis", axis));
      return view -> over.of(vertices, v -> Math.toDegrees(view.turned(name, v)));
    }
  }

  /** Sum of the support forces on a set along a direction, N. */
  record Reaction(String at, String name, Selector where, Triple direction) implements Probe {
    @Override
    public String unit() {
      return "n";
    }

    @Override
    public Reading reading(ProbeSite site) {
      int[] vertices = site.vertices(where);
      double[] along = site.unit(at + "/direction", direction);
      return view -> Over.SUM.of(vertices, v -> Vectors.dot(along, ProbeSite.reaction(view, v)));
    }
  }

  /** Distance between the middles of two sets, mm. */
  record Distance(String at, String name, Selector from, Selector to) implements Probe {
    @Override
    public String unit() {
      return "mm";
    }

    @Override
    public Reading reading(ProbeSite site) {
      int[] start = site.vertices(from);
      int[] end = site.vertices(to);
      return view ->
          Vectors.norm(Vectors.subtract(site.middle(view, end), site.middle(view, start)));
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

    @Override
    public Reading reading(ProbeSite site) {
      int[] triangles = site.triangles(where);
      FieldProbe fields = site.fields();
      return view -> over.of(triangles, t -> fields.value(this, t, view), fields::area);
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

    @Override
    public Reading reading(ProbeSite site) {
      return ShellView::energy;
    }
  }

  /** Tension of a thread, N. */
  record Tension(String at, String name, String thread) implements Probe {
    @Override
    public String unit() {
      return "n";
    }

    @Override
    public Reading reading(ProbeSite site) {
      site.checkThread(at, thread);
      return view -> view.tension(thread);
    }
  }

  /** Force of a contact on the vertices it keeps out, along a direction or its length, N. */
  record ContactForce(String at, String name, String contact, Optional<Triple> direction)
      implements Probe {
    @Override
    public String unit() {
      return "n";
    }

    @Override
    public Reading reading(ProbeSite site) {
      Optional<Contact> found = site.contact(at, contact);
      direction.ifPresent(d -> site.unit(at + "/direction", d));
      return view ->
          found.map(c -> ProbeSite.along(direction, c.force(view.unknowns()))).orElse(Double.NaN);
    }
  }

  /** Smallest gap between the faces of a contact, mm; no number while none is near. */
  record ContactGap(String at, String name, String contact) implements Probe {
    @Override
    public String unit() {
      return "mm";
    }

    @Override
    public Reading reading(ProbeSite site) {
      Optional<Contact> found = site.contact(at, contact);
      return view -> found.map(c -> c.gap(view.unknowns())).orElse(Double.NaN);
    }
  }

  /** The load factor. */
  record LoadFactor(String at, String name) implements Probe {
    @Override
    public String unit() {
      return "factor";
    }

    @Override
    public Reading reading(ProbeSite site) {
      return ShellView::loadFactor;
    }
  }
}
