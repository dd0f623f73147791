package auricle.analysis;

import auricle.energy.EnergyTerm;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A contact of a model: its energy terms and what probes ask of it. */
final class Contact {
  /** Unknowns of a contribution at most: a vertex and three corners. */
  private static final int MOST = 12;

  private final String name;
  private final List<EnergyTerm> terms;
  private final Set<Integer> pushed;
  private final ToDoubleFunction<double[]> gap;

  /**
   * @param name empty if none was given
   * @param terms its energy
   * @param vertices those whose push a probe tells
   * @param gap smallest gap at unknowns, mm; infinite if nothing is near
   */
  Contact(String name, List<EnergyTerm> terms, int[] vertices, ToDoubleFunction<double[]> gap) {
    this.name = name;
    this.terms = List.copyOf(terms);
    this.pushed = IntStream.of(vertices).boxed().collect(Collectors.toUnmodifiableSet());
    this.gap = gap;
  }

  String name() {
    return name;
  }

  List<EnergyTerm> terms() {
    return terms;
  }

  /** Smallest gap between the faces, mm; no number if none is within reach. */
  double gap(double[] u) {
    double smallest = gap.applyAsDouble(u);
    return Double.isInfinite(smallest) ? Double.NaN : smallest;
  }

  /** Force of the contact on its vertices together, N. */
  double[] force(double[] u) {
    double[] forces = new double[u.length];
    addForces(u, forces);
    double[] sum = new double[3];
    for (int v : pushed) {
      for (int c = 0; c < 3; c++) {
        sum[c] += forces[3 * v + c];
      }
    }
    return sum;
  }

  /** Adds the force of the contact on every vertex of the shell, three numbers a vertex, N. */
  void addForces(double[] u, double[] forces) {
    double[] gradient = new double[MOST];
    double[] hessian = new double[MOST * MOST];
    for (EnergyTerm term : terms) {
      for (int i = 0; i < term.count(); i++) {
        int[] stencil = term.stencil(i);
        term.derivatives(i, u, gradient, hessian);
        for (int k = 0; k < stencil.length; k++) {
          forces[stencil[k]] -= gradient[k];
        }
      }
    }
  }
}
