package auricle.energy;

import auricle.material.SectionField;
import auricle.mesh.Directors;
import auricle.mesh.RestShape;
import java.util.Arrays;

/**
 * Strain, curvature and section forces of every triangle, for results.
 *
 * <p>All are in the axes of the triangle's section. Membrane strain is the mean of the smoothed
 * strains of the triangle's edges (those that carry the energy); curvature is the mean over the
 * triangle. Components 0, 1, 2: 11, 22 and, for strain and curvature, 2·12 (12 for forces and
 * moments).
 */
public final class ShellState {
  private final RestShape start;
  private final RestShape rest;
  private final Directors directors;
  private final SectionField sections;
  private final double[] strain;
  private final double[] curvature;

  /** Arguments as for {@link ShellTerms#of}. */
  public ShellState(RestShape rest, Directors directors, SectionField sections) {
    this(rest, rest, directors, sections);
  }

  /** Arguments as for {@link ShellTerms#growing}. */
  public ShellState(RestShape start, RestShape grown, Directors directors, SectionField sections) {
    this.start = start;
    this.rest = grown;
    this.directors = directors;
    this.sections = sections;
    this.strain = new double[3 * grown.topology().triangleCount()];
    this.curvature = new double[3 * grown.topology().triangleCount()];
  }

  /** Computes everything at u with the directors as they are and the rest shape in full. */
  public void evaluate(double[] u) {
    evaluate(u, 1);
  }

  /** Computes everything at u with the directors as they are, at a load factor. */
  public void evaluate(double[] u, double loadFactor) {
    Arrays.fill(strain, 0);
    EdgeArcs arcs = EdgeArcs.local();
    for (EdgeDomain domain : EdgeDomain.all(start, rest, directors.unknowns(), sections)) {
      domain.grow(loadFactor);
      arcs.measure(domain, u, directors, false);
      for (EdgeDomain.Side side : domain.sides()) {
        double angle = sections.angle(side.triangle()) - side.axis();
        double[] e = StrainAxes.turned(arcs.strain().clone(), Math.cos(angle), Math.sin(angle));
        for (int a = 0; a < 3; a++) {
          strain[3 * side.triangle() + a] += e[a] / 3;
        }
      }
    }
    evaluateCurvature(u, loadFactor);
  }

  /** Computes curvatures alone. */
  public void evaluateCurvature(double[] u, double loadFactor) {
    for (int t = 0; t < rest.topology().triangleCount(); t++) {
      bend(t, u, loadFactor);
    }
  }

  private void bend(int t, double[] u, double loadFactor) {
    TiltCurvature tilts = TiltCurvature.local();
    tilts.measure(
        TiltCurvature.stencil(rest.topology(), directors.unknowns(), t), u, directors, false);
    double[] restTilts = new double[6];
    TiltCurvature.rest(start, rest, loadFactor, t, restTilts, 0);
    double[] k = new double[3];
    tilts.curvature(TiltCurvature.mean(rest.plate(t)), 0, restTilts, 0, k);
    double angle = sections.angle(t);
    System.arraycopy(
        StrainAxes.turned(k, Math.cos(angle), Math.sin(angle)), 0, curvature, 3 * t, 3);
  }

  /** Membrane strain, component a of a triangle. */
  public double strain(int triangle, int a) {
    return strain[3 * triangle + a];
  }

  /** Change of curvature from rest, 1/mm, component a of a triangle. */
  public double curvature(int triangle, int a) {
    return curvature[3 * triangle + a];
  }

  /** Section force N, N/mm. */
  public double force(int triangle, int a) {
    return resultant(triangle, a);
  }

  /**
   * Section moment M, N (N·mm per mm); positive where it makes the surface convex to its normal.
   */
  public double moment(int triangle, int a) {
    return resultant(triangle, a + 3);
  }

  private double resultant(int triangle, int row) {
    double sum = 0;
    for (int b = 0; b < 3; b++) {
      sum +=
          sections.section(triangle).stiffness(row, b) * strain(triangle, b)
              + sections.section(triangle).stiffness(row, b + 3) * curvature(triangle, b);
    }
    return sum;
  }

  /** Elastic energy of a triangle by its mean strain and curvature, mJ. */
  public double energy(int triangle) {
    double sum = 0;
    for (int a = 0; a < 3; a++) {
      sum +=
          force(triangle, a) * strain(triangle, a) + moment(triangle, a) * curvature(triangle, a);
    }
    return 0.5 * sum * rest.plate(triangle).area();
  }
}
