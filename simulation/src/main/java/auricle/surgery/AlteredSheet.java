package auricle.surgery;

import auricle.energy.EnergyTerm;
import auricle.energy.ShellState;
import auricle.energy.ShellTerms;
import auricle.mesh.Directors;
import auricle.mesh.RestShape;
import auricle.mesh.ShellMesh;
import java.util.List;

/**
 * A sheet as operations alter it: its sections, the rest shape in force and the one that it is to
 * have, and the energy that leads from the first to the second over the load factor 0 … 1.
 */
final class AlteredSheet {
  private final Directors directors;
  private final BodySections sections;
  private final BodySections unaltered;
  private final RestShape rest;
  private final RestShape target;
  private final RestShape before;
  private final List<RenewableTerm> terms;
  private boolean altered;

  /** Whether the terms still lead from an earlier rest shape to the present one. */
  private boolean growing;

  /**
   * @param mesh at rest
   * @param directors of its vertices, with the frames of the present state
   * @param sections of its triangles, without coupling; kept and changed here
   */
  AlteredSheet(ShellMesh mesh, Directors directors, BodySections sections) {
    this.directors = directors;
    this.sections = sections;
    unaltered = sections.copy();
    rest = RestShape.of(mesh.topology(), mesh.unknowns(), directors);
    target = rest.copy();
    before = rest.copy();
    terms = ShellTerms.of(rest, directors, sections).stream().map(RenewableTerm::new).toList();
  }

  /** Its energy. */
  List<RenewableTerm> terms() {
    return terms;
  }

  /** Present sections; whoever changes them calls {@link #altered}. */
  BodySections sections() {
    return sections;
  }

  /** The rest shape to go to; not to be changed. */
  RestShape target() {
    return target;
  }

  /**
   * Bends the rest shape of a triangle across the fold by a curvature, 1/mm, positive where it
   * becomes more convex to the front.
   */
  void bend(int triangle, double curvature) {
    sections.bend(target, triangle, curvature);
  }

  /** Shrinks the rest shape of a triangle across the fold by a share of its length. */
  void shrinkAcross(int triangle, double share) {
    shrink(triangle, share, sections.angle(triangle) + Math.PI / 2);
  }

  /** Shrinks the rest shape of a triangle along the fold by a share of its length. */
  void shrinkAlong(int triangle, double share) {
    shrink(triangle, share, sections.angle(triangle));
  }

  private void shrink(int triangle, double share, double angle) {
    double x = Math.cos(angle);
    double y = Math.sin(angle);
    target.stretch(triangle, -share * x * x, -share * y * y, -share * x * y);
  }

  /** To be called after sections or the rest shape have been altered. */
  void altered() {
    altered = true;
  }

  /** Takes back all that was altered, of what is to be: the rest shape in force stays. */
  void unalter() {
    sections.become(unaltered);
    target.become(before);
    altered = true;
  }

  /** Takes over sections and the rest shape to go to. */
  void become(BodySections otherSections, RestShape otherTarget) {
    sections.become(otherSections);
    target.become(otherTarget);
    altered = true;
  }

  /** Lets the terms lead from one rest shape to what was altered, or stay where they have led. */
  void lead() {
    if (altered || growing) {
      renew(altered);
    }
  }

  /** The same from a rest shape other than that in force. */
  void leadFrom(RestShape other) {
    rest.become(other);
    altered = true;
  }

  /** The rest shape to go to is in force from now on; the terms may lead there still. */
  void arrive() {
    rest.become(target);
  }

  /** All that was altered is in force at once. */
  void putInForce() {
    arrive();
    renew(false);
  }

  private void renew(boolean leading) {
    List<EnergyTerm> made = ShellTerms.growing(rest.copy(), target.copy(), directors, sections);
    for (int i = 0; i < made.size(); i++) {
      terms.get(i).renew(made.get(i));
    }
    growing = leading;
    altered = false;
  }

  /**
   * Rest shape and sections with every cut as it stands now; copies.
   *
   * @param u present unknowns
   */
  ShutShell shut(double[] u) {
    ShutShell shut = new ShutShell(rest.copy(), sections.copy());
    if (sections.scored()) {
      ShellState state = new ShellState(rest, directors, sections);
      state.evaluateCurvature(u, 1);
      shut.sections().settleCuts(state, shut.rest());
    }
    return shut;
  }
}
