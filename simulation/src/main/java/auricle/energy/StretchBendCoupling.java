package auricle.energy;

import auricle.material.SectionField;
import auricle.mesh.Directors;
import auricle.mesh.RestShape;
import auricle.mesh.Topology;
import java.util.Arrays;
import java.util.List;

/**
 * Coupling of stretching and bending in an unsymmetric section, one contribution an edge domain: W
 * = w E : B : K with the strain and the mean curvature of the domain's triangles averaged by area.
 *
 * <p>Both are averaged over the same domain, so that with A and D the energy stays positive: the
 * averaged curvature has no more energy than the curvature itself (Jensen). Stencil as in {@link
 * EdgeMembrane}.
 */
public final class StretchBendCoupling implements EnergyTerm {
  private final Directors directors;
  private final List<EdgeDomain> domains;
  private final int[][][] stencils;
  private final int[][][] places;
  private final double[][][] curvatureOfTilts;
  private final double[][][] restTilts;
  private final RestShape start;
  private final RestShape grown;
  private final RestWatch watch;

  /** Arguments as for {@link EdgeMembrane}; B is used here. */
  public StretchBendCoupling(
      RestShape start, RestShape grown, Directors directors, SectionField sections) {
    this.start = start;
    this.grown = grown;
    this.watch = new RestWatch(start, grown);
    this.directors = directors;
    this.domains =
        EdgeDomain.all(start, grown, directors.unknowns(), sections).stream()
            .filter(d -> d.sides().stream().anyMatch(s -> coupled(s.triangle(), sections)))
            .toList();
    int n = domains.size();
    this.stencils = new int[n][][];
    this.places = new int[n][][];
    this.curvatureOfTilts = new double[n][][];
    this.restTilts = new double[n][][];
    for (int i = 0; i < n; i++) {
      prepare(i, grown);
    }
    setLoadFactor(1);
  }

  private static boolean coupled(int triangle, SectionField sections) {
    return sections.covers(triangle) && sections.section(triangle).coupled();
  }

  @Override
  public void setLoadFactor(double loadFactor) {
    if (!watch.changed(loadFactor)) {
      return;
    }
    for (int i = 0; i < domains.size(); i++) {
      domains.get(i).grow(loadFactor);
      for (int s = 0; s < restTilts[i].length; s++) {
        int triangle = domains.get(i).sides().get(s).triangle();
        TiltCurvature.rest(start, grown, loadFactor, triangle, restTilts[i][s], 0);
      }
    }
  }

  private void prepare(int i, RestShape rest) {
    EdgeDomain domain = domains.get(i);
    Topology topology = rest.topology();
    int sides = domain.sides().size();
    stencils[i] = new int[sides][];
    places[i] = new int[sides][];
    curvatureOfTilts[i] = new double[sides][];
    restTilts[i] = new double[sides][6];
    for (int s = 0; s < sides; s++) {
      EdgeDomain.Side side = domain.sides().get(s);
      stencils[i][s] = TiltCurvature.stencil(topology, directors.unknowns(), side.triangle());
      places[i][s] = places(side.corners(), domain.vertexCount());
      double[] mean = TiltCurvature.mean(side.plate());
      curvatureOfTilts[i][s] =
          StrainAxes.turned(mean, Math.cos(side.axis()), Math.sin(side.axis()));
      for (int k = 0; k < 18; k++) {
        curvatureOfTilts[i][s][k] *= side.share();
      }
    }
  }

  private static int[] places(List<Integer> corners, int n) {
    int[] places = new int[TiltCurvature.SIZE];
    for (int i = 0; i < 3; i++) {
      for (int c = 0; c < 3; c++) {
        places[3 * i + c] = 3 * corners.get(i) + c;
      }
      places[9 + 2 * i] = 3 * n + 2 * corners.get(i);
      places[10 + 2 * i] = 3 * n + 2 * corners.get(i) + 1;
    }
    return places;
  }

  @Override
  public String name() {
    return "stretch-bend coupling";
  }

  @Override
  public int count() {
    return domains.size();
  }

  @Override
  public int[] stencil(int i) {
    return domains.get(i).stencil();
  }

  @Override
  public double value(int i, double[] u) {
    EdgeArcs arcs = EdgeArcs.local();
    arcs.measure(domains.get(i), u, directors, false);
    double[] curvature = new double[3];
    double[] slope = new double[0];
    for (int s = 0; s < stencils[i].length; s++) {
      addCurvature(i, s, u, curvature, slope);
    }
    return energy(domains.get(i), arcs.strain(), curvature);
  }

  private static double energy(EdgeDomain domain, double[] strain, double[] curvature) {
    double energy = 0;
    for (int a = 0; a < 3; a++) {
      for (int b = 0; b < 3; b++) {
        energy += strain[a] * domain.stiffness(a, b + 3) * curvature[b];
      }
    }
    return energy;
  }

  private void addCurvature(int i, int s, double[] u, double[] curvature, double[] slope) {
    TiltCurvature tilts = TiltCurvature.local();
    boolean slopes = slope.length > 0;
    tilts.measure(stencils[i][s], u, directors, slopes);
    double[] c = curvatureOfTilts[i][s];
    double[] part = new double[3];
    tilts.curvature(c, 0, restTilts[i][s], 0, part);
    int size = domains.get(i).stencil().length;
    for (int a = 0; a < 3; a++) {
      curvature[a] += part[a];
      for (int r = 0; slopes && r < TiltCurvature.SIZE; r++) {
        for (int k = 0; k < 6; k++) {
          slope[size * a + places[i][s][r]] +=
              c[6 * a + k] * tilts.slope()[TiltCurvature.SIZE * k + r];
        }
      }
    }
  }

  @Override
  public double derivatives(int i, double[] u, double[] gradient, double[] hessian) {
    EdgeDomain domain = domains.get(i);
    int size = domain.stencil().length;
    EdgeArcs arcs = EdgeArcs.local();
    arcs.measure(domain, u, directors, true);
    double[] curvature = new double[3];
    double[] bend = new double[3 * size];
    for (int s = 0; s < stencils[i].length; s++) {
      addCurvature(i, s, u, curvature, bend);
    }
    double[] force = new double[3];
    double[] moment = new double[3];
    for (int a = 0; a < 3; a++) {
      for (int b = 0; b < 3; b++) {
        force[a] += domain.stiffness(a, b + 3) * curvature[b];
        moment[b] += domain.stiffness(a, b + 3) * arcs.strain()[a];
      }
    }
    products(domain, arcs.slope(), bend, force, moment, gradient, hessian);
    arcs.addCurving(domain, force, hessian);
    for (int s = 0; s < stencils[i].length; s++) {
      addTiltCurving(i, s, u, moment, hessian);
    }
    EdgeArcs.mirror(hessian, size);
    return energy(domain, arcs.strain(), curvature);
  }

  private static void products(
      EdgeDomain domain,
      double[] stretch,
      double[] bend,
      double[] force,
      double[] moment,
      double[] gradient,
      double[] hessian) {
    int size = domain.stencil().length;
    Arrays.fill(hessian, 0, size * size, 0);
    for (int r = 0; r < size; r++) {
      gradient[r] = 0;
      for (int a = 0; a < 3; a++) {
        gradient[r] += force[a] * stretch[size * a + r] + moment[a] * bend[size * a + r];
        for (int b = 0; b < 3; b++) {
          double w = domain.stiffness(a, b + 3);
          for (int c = 0; c <= r; c++) {
            hessian[size * r + c] +=
                w
                    * (stretch[size * a + r] * bend[size * b + c]
                        + stretch[size * a + c] * bend[size * b + r]);
          }
        }
      }
    }
  }

  private void addTiltCurving(int i, int s, double[] u, double[] moment, double[] hessian) {
    TiltCurvature tilts = TiltCurvature.local();
    tilts.measure(stencils[i][s], u, directors, true);
    double[] force = new double[6];
    for (int k = 0; k < 6; k++) {
      for (int a = 0; a < 3; a++) {
        force[k] += moment[a] * curvatureOfTilts[i][s][6 * a + k];
      }
    }
    tilts.addCurving(force, hessian, domains.get(i).stencil().length, places[i][s]);
  }
}
