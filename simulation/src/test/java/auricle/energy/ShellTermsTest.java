package auricle.energy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.material.Section;
import auricle.material.SectionField;
import auricle.mesh.Directors;
import auricle.mesh.RestShape;
import auricle.mesh.Topology;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

class ShellTermsTest {
  private static final int[] TRIANGLES = {0, 1, 4, 0, 4, 3, 1, 2, 5, 1, 5, 4, 3, 4, 6, 4, 5, 6};
  private static final double[] POINTS = {
    0, 0, 0, 1.1, 0.1, 0.2, 2, -0.1, 0.1, 0.1, 1, 0.3, 1, 1.1, 0.5, 2.1, 0.9, 0.2, 1.2, 2, 0.1
  };
  private final Topology topology = new Topology(7, TRIANGLES);
  private final UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(11);

  private static final SectionField LAYERED =
      new SectionField() {
        private final Section thin =
            Section.laminate()
                .orthotropic(5, 2, 0.3, 0.9, 0.4, 0.1)
                .isotropic(1.5, 0.4, 0.25)
                .build();
        private final Section thick = Section.isotropic(2, 0.3, 0.5);

        @Override
        public Section section(int triangle) {
          return triangle < 4 ? thin : thick;
        }

        @Override
        public double angle(int triangle) {
          return 0.3 * triangle;
        }
      };

  private double[] normals(double sway) {
    double[] n = new double[21];
    for (int i = 0; i < 7; i++) {
      n[3 * i] = sway * (random.nextDouble() - 0.5) + 0.2 * (POINTS[3 * i] - 1);
      n[3 * i + 1] = sway * (random.nextDouble() - 0.5) + 0.2 * (POINTS[3 * i + 1] - 1);
      n[3 * i + 2] = 1;
    }
    return n;
  }

  private double[] unknowns(double shake) {
    double[] u = new double[topology.unknowns().size()];
    System.arraycopy(POINTS, 0, u, 0, 21);
    for (int i = 0; i < u.length; i++) {
      u[i] += shake * (random.nextDouble() - 0.5);
    }
    return u;
  }

  private List<EnergyTerm> terms(Directors directors) {
    RestShape rest = RestShape.of(topology, unknowns(0), directors);
    rest.addStrain(1, 0.02, -0.01, 0.005);
    rest.addCurvature(2, 0.1, -0.05, 0.07);
    return ShellTerms.of(rest, directors, LAYERED);
  }

  @Test
  void derivativesAreExactInAShakenState() {
    Directors directors = new Directors(topology.unknowns(), normals(0.2));
    List<EnergyTerm> terms = terms(directors);
    assertEquals(3, terms.size());
    for (double shake : new double[] {0.01, 0.3}) {
      double[] u = unknowns(shake);
      for (EnergyTerm term : terms) {
        EnergyTermContract.assertExact(term, u);
      }
    }
  }

  @Test
  void theRestShapeHasNoEnergyAndNoForce() {
    Directors directors = new Directors(topology.unknowns(), normals(0.2));
    double[] u = unknowns(0);
    RestShape rest = RestShape.of(topology, u, directors);
    for (EnergyTerm term : ShellTerms.of(rest, directors, LAYERED)) {
      assertEquals(0, total(term, u), 1e-25);
    }
  }

  @Test
  void rigidMotionOfAnySizeChangesNothing() {
    double[] normals = normals(0.2);
    List<EnergyTerm> before = terms(new Directors(topology.unknowns(), normals));
    double[] u = unknowns(0.2);
    java.util.Arrays.fill(u, 21, u.length, 0);
    double[] turned = u.clone();
    double[] turnedNormals = normals.clone();
    for (int i = 0; i < 7; i++) {
      turn(turned, 3 * i);
      turn(turnedNormals, 3 * i);
      turned[3 * i] += 17;
    }
    Directors moved = new Directors(topology.unknowns(), normals);
    List<EnergyTerm> after = new ArrayList<>(terms(moved));
    moved.restore(new Directors(topology.unknowns(), turnedNormals).save());
    for (int k = 0; k < before.size(); k++) {
      EnergyTermContract.assertInvariant(before.get(k), u, after.get(k), turned);
    }
  }

  /** About (1, 2, 2)/3 by 2.1 rad, by Rodrigues' formula. */
  private static void turn(double[] v, int at) {
    double c = Math.cos(2.1);
    double s = Math.sin(2.1);
    double x = v[at];
    double y = v[at + 1];
    double z = v[at + 2];
    double along = (x + 2 * y + 2 * z) / 9 * (1 - c);
    v[at] = c * x + s * (2 * z - 2 * y) / 3 + along;
    v[at + 1] = c * y + s * (2 * x - z) / 3 + 2 * along;
    v[at + 2] = c * z + s * (y - 2 * x) / 3 + 2 * along;
  }

  @Test
  void theEnergyOfALayeredPatchIsPositive() {
    Directors directors = new Directors(topology.unknowns(), normals(0.2));
    RestShape rest = RestShape.of(topology, unknowns(0), directors);
    List<EnergyTerm> terms = ShellTerms.of(rest, directors, LAYERED);
    for (int trial = 0; trial < 200; trial++) {
      double[] u = unknowns(0.05);
      assertTrue(terms.stream().mapToDouble(term -> total(term, u)).sum() > 0);
    }
  }

  private static double total(EnergyTerm term, double[] u) {
    double sum = 0;
    for (int i = 0; i < term.count(); i++) {
      sum += term.value(i, u);
    }
    return sum;
  }

  /** Covers the first triangles alone. */
  private static final SectionField PATCH =
      new SectionField() {
        @Override
        public boolean covers(int triangle) {
          return triangle < 3;
        }

        @Override
        public Section section(int triangle) {
          return Section.isotropic(1, 0.4, 0.3);
        }

        @Override
        public double angle(int triangle) {
          return 0.2;
        }
      };

  private static final SectionField ALL = SectionField.uniform(Section.isotropic(2, 0.3, 0.5));

  /** The same on all triangles, but as good as nothing where the patch is not. */
  private static SectionField faintElsewhere(SectionField patch) {
    return new SectionField() {
      @Override
      public Section section(int triangle) {
        Section there = patch.section(triangle);
        return patch.covers(triangle) ? there : there.scaled(1e-13, 1e-13);
      }

      @Override
      public double angle(int triangle) {
        return patch.angle(triangle);
      }

      @Override
      public boolean joined(int triangle, int neighbour) {
        return true;
      }
    };
  }

  @Test
  void layersInOneAreTheSumOfTheLayers() {
    Directors directors = new Directors(topology.unknowns(), normals(0.2));
    RestShape first = RestShape.of(topology, unknowns(0), directors);
    RestShape second = first.copy();
    ShellLayer whole = new ShellLayer(first, ALL);
    ShellLayer patch = new ShellLayer(second, PATCH);
    List<EnergyTerm> layered = ShellTerms.layered(List.of(whole, patch), directors);
    List<EnergyTerm> alone = new ArrayList<>(ShellTerms.of(first, directors, ALL));
    List<EnergyTerm> other = ShellTerms.of(second, directors, faintElsewhere(PATCH));
    second.addStrain(1, 0.02, -0.01, 0.005);
    second.addCurvature(2, 0.1, -0.05, 0.07);
    whole.share(0.6);
    patch.share(0.3);
    ScaledTerm[] scaled = new ScaledTerm[4];
    for (int k = 0; k < 4; k++) {
      scaled[k] = new ScaledTerm(k < 2 ? alone.get(k) : other.get(k - 2));
      scaled[k].scale(k < 2 ? 0.6 : 0.3, k < 2 ? 0.6 : 0.3);
      scaled[k].setLoadFactor(1);
    }
    layered.forEach(term -> term.setLoadFactor(1));
    double[] u = unknowns(0.1);
    for (int k = 0; k < 2; k++) {
      EnergyTermContract.assertExact(layered.get(k), u);
      double[] sum = sum(layered.get(k), u);
      double[] parts = sum(scaled[k], u);
      double[] more = sum(scaled[k + 2], u);
      for (int i = 0; i < sum.length; i++) {
        assertEquals(parts[i] + more[i], sum[i], 1e-11, layered.get(k).name() + ", entry " + i);
      }
      assertTrue(Math.abs(more[0]) > 1e-5, "the patch counts");
    }
  }

  /** Energy, then the gradient, then the Hessian. */
  private static double[] sum(EnergyTerm term, double[] u) {
    int n = u.length;
    double[] sum = new double[1 + n + n * n];
    double[] g = new double[n];
    double[] h = new double[n * n];
    for (int i = 0; i < term.count(); i++) {
      int[] stencil = term.stencil(i);
      sum[0] += term.derivatives(i, u, g, h);
      for (int r = 0; r < stencil.length; r++) {
        sum[1 + stencil[r]] += g[r];
        for (int c = 0; c < stencil.length; c++) {
          sum[1 + n + n * stencil[r] + stencil[c]] += h[stencil.length * r + c];
        }
      }
    }
    return sum;
  }

  private static double energy(List<EnergyTerm> terms, double[] u) {
    return terms.stream()
        .mapToDouble(
            t -> {
              t.setLoadFactor(1);
              return IntStream.range(0, t.count()).mapToDouble(i -> t.value(i, u)).sum();
            })
        .sum();
  }

  /** However a rest shape is changed under its terms, the next load factor is of what it is now. */
  @Test
  void aRestShapeThatChangesIsReadAgainUnderTheSameLoadFactor() {
    Directors directors = new Directors(topology.unknowns(), normals(0.2));
    RestShape rest = RestShape.of(topology, unknowns(0), directors);
    RestShape other = rest.copy();
    other.addStrain(0, 0.03, 0, 0);
    List<Consumer<RestShape>> changes =
        List.of(
            r -> r.addStrain(1, 0.02, -0.01, 0.005),
            r -> r.addCurvature(2, 0.1, -0.05, 0.07),
            r -> r.stretch(3, 0.02, 0.01, 0),
            r -> r.scale(1.01),
            r -> r.add(0.01, other),
            r -> r.become(other));
    RestShape start = rest.copy();
    List<EnergyTerm> terms = ShellTerms.growing(start, rest, directors, LAYERED);
    double[] u = unknowns(0.05);
    for (Consumer<RestShape> change : changes) {
      double before = energy(terms, u);
      change.accept(rest);
      double after = energy(terms, u);
      assertTrue(Math.abs(after - before) > 1e-5 * before, before + " and still " + after);
    }
  }
}
