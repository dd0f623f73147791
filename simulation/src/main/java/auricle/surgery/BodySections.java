package auricle.surgery;

import auricle.material.Section;
import auricle.material.SectionField;

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
    return new BodySections(uncut.clone(), compliance.clone(), now.clone(), angle, firm);
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
  public double angle(int triangle) {
    return angle[triangle];
  }

  /** Cut or not, one sheet throughout, except where cartilage ends. */
  @Override
  public boolean joined(int triangle, int neighbour) {
    return firm[triangle] == firm[neighbour];
  }
}
