package auricle.energy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import auricle.material.Section;
import auricle.material.SectionField;
import auricle.mesh.Directors;
import auricle.mesh.RestShape;
import auricle.mesh.Topology;
import org.junit.jupiter.api.Test;

/** Constant states are exact on any mesh: the patch tests of the shell. */
class ShellStateTest {
  private static final int[] TRIANGLES = {0, 1, 4, 0, 4, 3, 1, 2, 4, 2, 3, 4};
  private static final double[] X = {0, 0, 2, 0.1, 2.3, 1.9, -0.2, 2.1, 0.8, 1.3};
  private final Topology topology = new Topology(5, TRIANGLES);
  private final Section section = Section.isotropic(3, 0.4, 0.2);
  private final SectionField field =
      new SectionField() {
        @Override
        public Section section(int triangle) {
          return section;
        }

        /** The first axis of the section is the x axis of space. */
        @Override
        public double angle(int triangle) {
          int from = topology.vertex(triangle, 1);
          int to = topology.vertex(triangle, 2);
          return -Math.atan2(X[2 * to + 1] - X[2 * from + 1], X[2 * to] - X[2 * from]);
        }
      };
  private final double[] u = new double[topology.unknowns().size()];
  private final double[] normals = new double[15];

  private ShellState state() {
    for (int i = 0; i < 5; i++) {
      u[3 * i] = X[2 * i];
      u[3 * i + 1] = X[2 * i + 1];
      normals[3 * i + 2] = 1;
    }
    Directors directors = new Directors(topology.unknowns(), normals);
    RestShape rest = RestShape.of(topology, u, directors);
    ShellState state = new ShellState(rest, directors, field);
    return state;
  }

  @Test
  void constantMembraneStrainIsExact() {
    ShellState state = state();
    for (int i = 0; i < 5; i++) {
      u[3 * i] += 0.01 * X[2 * i] + 0.004 * X[2 * i + 1];
      u[3 * i + 1] -= 0.02 * X[2 * i + 1];
    }
    state.evaluate(u);
    for (int t = 0; t < 4; t++) {
      // Green's strain of the displacement gradient above
      assertEquals(0.01 + 0.5 * 1e-4, state.strain(t, 0), 1e-14);
      assertEquals(-0.02 + 0.5 * (16e-6 + 4e-4), state.strain(t, 1), 1e-14);
      assertEquals(0.004 + 0.01 * 0.004, state.strain(t, 2), 1e-14);
      double n = 3 * 0.2 / (1 - 0.16) * (state.strain(t, 0) + 0.4 * state.strain(t, 1));
      assertEquals(n, state.force(t, 0), 1e-14);
    }
  }

  @Test
  void constantCurvatureIsExactOnAnIrregularMesh() {
    state(); // fills the unknowns and normals
    double k = 1e-7;
    double[] bent = new double[15];
    for (int i = 0; i < 5; i++) {
      double x = X[2 * i];
      double y = X[2 * i + 1];
      u[3 * i + 2] = -0.5 * k * (x * x + 3 * y * y + 2 * 0.7 * x * y);
      bent[3 * i] = k * (x + 0.7 * y);
      bent[3 * i + 1] = k * (3 * y + 0.7 * x);
      bent[3 * i + 2] = 1;
    }
    Directors flat = new Directors(topology.unknowns(), normals);
    double[] rest0 = u.clone();
    for (int i = 0; i < 5; i++) {
      rest0[3 * i + 2] = 0;
    }
    RestShape rest = RestShape.of(topology, rest0, flat);
    Directors curved = new Directors(topology.unknowns(), bent);
    ShellState state = new ShellState(rest, curved, field);
    state.evaluate(u);
    double d = 3 * 0.2 * 0.2 * 0.2 / (12 * (1 - 0.16));
    for (int t = 0; t < 4; t++) {
      assertEquals(k, state.curvature(t, 0), 1e-9 * k);
      assertEquals(3 * k, state.curvature(t, 1), 1e-9 * k);
      assertEquals(1.4 * k, state.curvature(t, 2), 1e-9 * k);
      assertEquals(d * (k + 0.4 * 3 * k), state.moment(t, 0), 1e-9 * d * k);
    }
  }

  @Test
  void addedRestCurvatureAndStrainAreThoseOfTheStressFreeShape() {
    state();
    Directors directors = new Directors(topology.unknowns(), normals);
    RestShape rest = RestShape.of(topology, u, directors);
    for (int t = 0; t < 4; t++) {
      rest.addStrain(t, 0.02, 0.02, 0);
      rest.addCurvature(t, 0.3, 0.3, 0);
    }
    ShellState state = new ShellState(rest, directors, SectionField.uniform(section));
    state.evaluate(u);
    for (int t = 0; t < 4; t++) {
      assertEquals(-0.3, state.curvature(t, 0), 1e-12);
      assertEquals(0, state.curvature(t, 2), 1e-9);
      assertEquals(-0.02 / 1.04, state.strain(t, 0), 1e-12);
    }
  }
}
