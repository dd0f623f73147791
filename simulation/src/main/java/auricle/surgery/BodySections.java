package auricle.surgery;

import auricle.energy.ShellState;
import auricle.material.BendingStop;
import auricle.material.Section;
import auricle.material.SectionField;
import auricle.mesh.RestShape;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The sections of a body as operations leave them: about the neutral surface, with the first axis
 * along the fold, and cuts as compliance across it.
 */
public final class BodySections implements SectionField {
  private final Section[] uncut;
  private final double[] compliance;
  private final Section[] now;
  private final double[] angle;
  private final boolean[] firm;
  private final Map<Integer, CutShut> shutting = new HashMap<>();

  /** Where cuts are as they stood, the section with all of them open. */
  private final Map<Integer, Section> varying = new HashMap<>();

  /**
   * @param uncut section of every triangle before any cut
   * @param angle from the triangle's edge 0 to the section's first axis, rad
   * @param firm whether a triangle has cartilage: strain jumps where it ends
   */
  BodySections(Section[] uncut, double[] angle, boolean[] firm) {
    this(uncut.clone(), new double[angle.length], uncut.clone(), angle.clone(), firm.clone());
  }

  private BodySections(
      Section[] uncut, double[] compliance, Section[] now, double[] angle, boolean[] firm) {
    this.uncut = uncut;
    this.compliance = compliance;
    this.now = now;
    this.angle = angle;
    this.firm = firm;
  }

  /** A copy that can be changed by itself. */
  public BodySections copy() {
    BodySections copy =
        new BodySections(uncut.clone(), compliance.clone(), now.clone(), angle, firm);
    shutting.forEach((triangle, cuts) -> copy.shutting.put(triangle, new CutShut(cuts)));
    copy.varying.putAll(varying);
    return copy;
  }

  /** Takes over all sections and cuts of a copy. */
  void become(BodySections other) {
    System.arraycopy(other.uncut, 0, uncut, 0, uncut.length);
    System.arraycopy(other.compliance, 0, compliance, 0, compliance.length);
    System.arraycopy(other.now, 0, now, 0, now.length);
    shutting.clear();
    other.shutting.forEach((triangle, cuts) -> shutting.put(triangle, new CutShut(cuts)));
    varying.clear();
    varying.putAll(other.varying);
  }

  /** Adds cuts that act only until they are shut. */
  void score(int triangle, CutShut.Cut cut) {
    soften(triangle, cut.compliance());
    shutting.computeIfAbsent(triangle, t -> new CutShut()).add(cut);
  }

  /** Whether there are cuts that may shut. */
  boolean scored() {
    return !shutting.isEmpty();
  }

  /**
   * Takes all cuts as they stand at a place, and leaves none that could open or shut: the shut ones
   * are as good as uncut, and what they have turned is in the rest shape. As it is the mean of a
   * triangle that shuts them, what varies within it still meets the section with all cuts open:
   * nothing moves by this.
   *
   * @param state by these sections
   * @param rest shape to turn
   */
  void settleCuts(ShellState state, RestShape rest) {
    shutting.forEach(
        (t, cuts) -> {
          double coupled = uncut[t].stiffness(3, 4) / uncut[t].stiffness(4, 4);
          double curvature = state.curvature(t, 1) + coupled * state.curvature(t, 0);
          CutShut.Standing standing = cuts.at(compliance[t], curvature);
          varying.put(t, now[t]);
          soften(t, standing.compliance() - compliance[t]);
          bend(rest, t, standing.turn_per_mm());
        });
    shutting.clear();
  }

  /** Bends a rest shape across the fold, 1/mm, positive: more convex to the front. */
  void bend(RestShape rest, int triangle, double curvature) {
    double nx = -Math.sin(angle[triangle]);
    double ny = Math.cos(angle[triangle]);
    rest.addCurvature(triangle, curvature * nx * nx, curvature * ny * ny, curvature * nx * ny);
  }

  @Override
  public List<BendingStop> stops(int triangle) {
    CutShut cuts = shutting.get(triangle);
    return cuts == null
        ? List.of()
        : cuts.stops(compliance[triangle], uncut[triangle].stiffness(4, 4));
  }

  /** Gives a triangle another section under its cuts. */
  void replace(int triangle, Section section) {
    uncut[triangle] = section;
    renew(triangle);
  }

  /** Adds compliance across the fold, as a share of that of the uncut section; may be negative. */
  void soften(int triangle, double added) {
    compliance[triangle] += added;
    renew(triangle);
  }

  private void renew(int t) {
    boolean cut = Math.abs(compliance[t]) > 1e-12;
    now[t] = cut ? uncut[t].softenedAcross(compliance[t]) : uncut[t];
  }

  /** The section that a triangle would have without cuts. */
  public Section uncut(int triangle) {
    return uncut[triangle];
  }

  /** Compliance that cuts add across the fold, as a share of that of the uncut section. */
  public double compliance(int triangle) {
    return compliance[triangle];
  }

  @Override
  public Section section(int triangle) {
    return now[triangle];
  }

  @Override
  public Section varying(int triangle) {
    return varying.getOrDefault(triangle, now[triangle]);
  }

  @Override
  public double angle(int triangle) {
    return angle[triangle];
  }

  /** Cut or not, one sheet throughout, except where cartilage ends. */
  @Override
  public boolean joined(int triangle, int neighbour) {
    return firm[triangle] == firm[neighbour];
  }
}
