package auricle.analysis;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Findings;
import auricle.energy.BarrierLaw;
import auricle.energy.ContactSettings;
import auricle.energy.ContactSurface;
import auricle.energy.ObstacleContact;
import auricle.energy.PlaneObstacle;
import auricle.energy.SurfaceContact;
import auricle.mesh.ShellMesh;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Contacts of a model. */
final class ContactPlan {
  /** Half of the area counts on either side of a contact of the shell with itself. */
  private static final double SHARED = 0.5;

  private final ShellMesh mesh;
  private final MeshSets sets;
  private final boolean linear;
  private final Findings findings;
  private final double[] rest;
  private final double[] areas;
  private final ContactThickness thickness;
  private final List<Contact> contacts = new ArrayList<>();

  ContactPlan(
      ShellMesh mesh, SectionPlan sections, MeshSets sets, boolean linear, Findings findings) {
    this.mesh = mesh;
    this.sets = sets;
    this.linear = linear;
    this.findings = findings;
    this.rest = mesh.unknowns();
    this.areas = new NodalShares(mesh).areas();
    this.thickness = new ContactThickness(mesh, sections, findings);
  }

  /** Contacts, in the order of the model. */
  List<Contact> list() {
    return contacts;
  }

  /** Adds a contact, or findings. */
  void add(Load.Contact l) {
    if (linear) {
      findings.error(
          l.at(),
          "contact in a linear solution, which knows no contact",
          "solve: load_steps, displacement_steps or path",
          "");
    }
    boolean taken =
        !l.name().isEmpty() && contacts.stream().anyMatch(c -> c.name().equals(l.name()));
    if (taken) {
      findings.error(
          l.at() + "/name", "a second contact '" + l.name() + "'", "a name of its own", "");
    }
    l.addTo(this);
  }

  private static BarrierLaw law(Load.Contact l) {
    return new BarrierLaw(l.gap_mm(), l.pressure_mpa());
  }

  private double[] areas(int[] vertices, double share) {
    return IntStream.of(vertices).mapToDouble(v -> share * areas[v]).toArray();
  }

  /** A contact with a half space. */
  void plane(Load.PlaneContact l) {
    int[] vertices = sets.find(l.where()).vertices();
    thickness.refuseOffset(l.at(), vertices);
    ObstacleContact contact =
        new ObstacleContact(
            "plane contact",
            new PlaneObstacle(l.point().array(), sets.unit(l.at() + "/normal", l.normal())),
            law(l),
            vertices,
            areas(vertices, 1),
            thickness.half(vertices));
    int inside = contact.firstViolation(rest);
    if (inside >= 0) {
      findings.error(
          l.at(),
          "vertex " + vertices[inside] + " begins inside the plane",
          "every vertex at least half a thickness outside",
          "");
    }
    contacts.add(
        new Contact(
            l.name(),
            List.of(contact),
            vertices,
            u ->
                IntStream.range(0, contact.count())
                    .mapToDouble(i -> contact.gap(i, u))
                    .min()
                    .orElse(Double.NaN)));
  }

  /** A contact with another surface. */
  void surface(Load.SurfaceContact l) {
    MeshSet set = sets.find(l.where());
    double half = thickness.same(l.at() + "/where", set.vertices());
    Optional<List<SurfaceContact>> terms = l.partner().terms(this, l, half);
    terms.ifPresent(
        list -> {
          if (!(gap(list, rest) > 0)) {
            findings.error(
                l.at(),
                "the two surfaces begin closer than their half thicknesses",
                "a gap between the faces",
                "Move one of them away; the gap may be smaller than gap_mm.");
          }
          contacts.add(new Contact(l.name(), List.copyOf(list), set.vertices(), u -> gap(list, u)));
        });
  }

  private static double gap(List<SurfaceContact> terms, double[] u) {
    return terms.stream().mapToDouble(t -> t.smallestGap(u)).min().orElse(Double.NaN);
  }

  /** Against a surface at rest in space. */
  Optional<List<SurfaceContact>> fixed(
      Load.SurfaceContact l, Load.Partner.Fixed fixed, double half) {
    int[] vertices = sets.find(l.where()).vertices();
    try {
      ShellMesh other = MeshLoader.load(fixed.mesh(), findings);
      double[] at = other.positions();
      double[] shift = fixed.shift().array();
      for (int i = 0; i < at.length; i++) {
        at[i] += shift[i % 3];
      }
      ContactSurface surface = ContactSurface.fixed(other.topology().triangles(), at);
      ContactSettings settings = ContactSettings.apart(law(l), half);
      return Optional.of(
          List.of(
              new SurfaceContact(
                  "contact " + l.name(), vertices, areas(vertices, 1), surface, rest, settings)));
    } catch (BadInputException e) {
      findings.addAll(e.findings());
      return Optional.empty();
    }
  }

  /** Against a part of the shell. */
  Optional<List<SurfaceContact>> part(Load.SurfaceContact l, Load.Partner.Part part, double half) {
    MeshSet one = sets.findTriangles(l.where());
    MeshSet two = sets.findTriangles(part.where());
    double separation = half + thickness.same(part.at(), two.vertices());
    if (Arrays.equals(one.triangles(), two.triangles())) {
      return Optional.of(List.of(against(l, one, two, ContactSettings.usual(law(l), separation))));
    }
    if (one.and(two).triangles().length > 0) {
      findings.error(
          part.at(),
          "the two parts share triangles and are not the same",
          "parts without a triangle in common, or twice the same part",
          "");
      return Optional.empty();
    }
    boolean joined = !one.and(two).isEmpty();
    ContactSettings settings =
        joined
            ? ContactSettings.usual(law(l), separation)
            : ContactSettings.apart(law(l), separation);
    return Optional.of(List.of(against(l, one, two, settings), against(l, two, one, settings)));
  }

  private SurfaceContact against(
      Load.SurfaceContact l, MeshSet kept, MeshSet other, ContactSettings settings) {
    int[] corners = IntStream.of(other.triangles()).flatMap(this::corners).toArray();
    ContactSurface surface = ContactSurface.moving(corners);
    int[] vertices = kept.vertices();
    return new SurfaceContact(
        "contact " + l.name(), vertices, areas(vertices, SHARED), surface, rest, settings);
  }

  private IntStream corners(int triangle) {
    return IntStream.range(0, 3).map(c -> mesh.topology().vertex(triangle, c));
  }
}
