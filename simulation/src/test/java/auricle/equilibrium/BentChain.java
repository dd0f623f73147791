package auricle.equilibrium;

import auricle.energy.EnergyTerm;
import auricle.mesh.MovingFrame;
import java.util.ArrayList;
import java.util.List;

/**
 * A clamped chain of stiff segments with springs at the joints, loaded across at its tip: a
 * discrete elastica that knows its exact answer. With segments of length h that do not stretch,
 * joint stiffness k and tip load F, the angles obey k (2 θ_i − θ_{i−1} − θ_{i+1}) = F h cos θ_i
 * with θ_0 = 0 and no moment at the tip.
 */
final class BentChain {
  private final int segments;
  private final double length;
  private final double stiffness;

  /** Segments beyond the clamped one, their length h, joint stiffness k. */
  BentChain(int segments, double length, double stiffness) {
    this.segments = segments;
    this.length = length;
    this.stiffness = stiffness;
  }

  /** Index of y of the tip. */
  int tip() {
    return 3 * (segments + 1) + 1;
  }

  double[] rest() {
    double[] rest = new double[3 * (segments + 2)];
    for (int v = 0; v < segments + 2; v++) {
      rest[3 * v] = (v - 1) * length;
    }
    return rest;
  }

  /** The chain with a tip load of λ F, segments of axial stiffness EA. */
  TotalEnergy loaded(double axialStiffness, double force, EnergyTerm... more) {
    double[] rest = rest();
    int[] ends = new int[2 * (segments + 1)];
    Supports.Builder supports = new Supports.Builder(rest.length, rest.length);
    for (int v = 0; v < segments + 1; v++) {
      ends[2 * v] = v;
      ends[2 * v + 1] = v + 1;
    }
    for (int i = 0; i < 6; i++) {
      supports.fix(i);
    }
    for (int v = 0; v < segments + 2; v++) {
      supports.fix(3 * v + 2);
    }
    List<EnergyTerm> terms = new ArrayList<>(List.of(more));
    terms.add(new Bars(axialStiffness, rest, ends));
    terms.add(new Joints(stiffness, 0, segments + 1));
    terms.add(new Pull(tip(), force));
    return new TotalEnergy(terms, supports.build(), MovingFrame.NONE, rest, 1);
  }

  /** Exact deflection of the tip. */
  double deflection(double force) {
    // the root nearest to a right angle: others belong to chains with loops
    double low = Math.PI / 2;
    while (march(low, force)[0] > 0) {
      low -= 1e-4;
    }
    double high = low + 1e-4;
    for (int k = 0; k < 200; k++) {
      double middle = (low + high) / 2;
      if (march(middle, force)[0] < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return march(low, force)[1];
  }

  /** From an angle at the tip back to the clamp: the angle there, and the height of the tip. */
  private double[] march(double tipAngle, double force) {
    double after = tipAngle;
    double angle = tipAngle;
    double height = 0;
    for (int i = segments; i > 0; i--) {
      height += length * Math.sin(angle);
      double before = 2 * angle - after - force * length / stiffness * Math.cos(angle);
      after = angle;
      angle = before;
    }
    return new double[] {angle, height};
  }
}
