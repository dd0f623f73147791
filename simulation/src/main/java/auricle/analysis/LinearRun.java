package auricle.analysis;

import auricle.equilibrium.Supports;
import auricle.equilibrium.TotalEnergy;
import auricle.numerics.Linearisation;
import auricle.numerics.SymmetricMatrix;
import java.util.Map;
import java.util.Optional;

/**
 * Small displacements: K δu = f with the stiffness K of the shell at rest and the whole load f.
 *
 * <p>K is put together once over all unknowns, for moved supports and reactions, and once over the
 * free ones.
 */
final class LinearRun {
  /** Share of the solution that a second solve may change: more means rounding has the word. */
  private static final double REFINED = 1e-3;

  private final ShellProblem problem;
  private final double[] load;
  private final double[] change;
  private final double[] forces;
  private final SymmetricMatrix stiffness;

  LinearRun(ShellProblem problem) {
    this.problem = problem;
    double[] start = problem.start();
    Supports none = new Supports.Builder(start.length, 3 * problem.mesh().vertexCount()).build();
    TotalEnergy whole = problem.energy(none);
    stiffness = new SymmetricMatrix(whole.pattern());
    load = new double[start.length];
    change = new double[start.length];
    forces = new double[start.length];
    whole.derivatives(start, load, stiffness);
    whole.setLoadFactor(1);
    whole.derivatives(start, load, new SymmetricMatrix(whole.pattern()));
    for (int i = 0; i < load.length; i++) {
      load[i] = -load[i];
    }
  }

  /** The solution, or nothing if the stiffness is singular or not that of a stable shell. */
  Optional<LinearView> solve() {
    for (Map.Entry<Integer, Double> moved : problem.supportPlan().amounts().entrySet()) {
      change[moved.getKey()] = moved.getValue();
    }
    residual();
    TotalEnergy held = problem.energy(problem.supports());
    Linearisation point = new Linearisation(held);
    double[] x = held.free();
    point.evaluate(x);
    point.factorize(true);
    if (!point.usable() || point.negativePivots() != 0) {
      return Optional.empty();
    }
    double first = correct(point);
    residual();
    double second = correct(point);
    residual();
    boolean settled = second <= REFINED * first;
    return settled ? Optional.of(view()) : Optional.empty();
  }

  /** forces = K change − load. */
  private void residual() {
    stiffness.multiply(change, forces);
    for (int i = 0; i < forces.length; i++) {
      forces[i] -= load[i];
    }
  }

  /** Solves for what is out of balance; the largest change of a coordinate, mm. */
  private double correct(Linearisation point) {
    double[] x = new double[problem.supports().freeCount()];
    for (int k = 0; k < x.length; k++) {
      x[k] = -forces[problem.supports().unknown(k)];
    }
    point.solve(x, x);
    double largest = 0;
    for (int k = 0; k < x.length; k++) {
      int i = problem.supports().unknown(k);
      change[i] += x[k];
      double size = i < problem.supports().firstTilt() ? Math.abs(x[k]) : 0;
      largest = size > largest || Double.isNaN(x[k]) ? size : largest;
    }
    return largest;
  }

  private LinearView view() {
    double energy = 0;
    for (int i = 0; i < change.length; i++) {
      energy += 0.5 * (forces[i] + load[i]) * change[i] - load[i] * change[i];
    }
    return new LinearView(problem, change, forces, energy);
  }
}
