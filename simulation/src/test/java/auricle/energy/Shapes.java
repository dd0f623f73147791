package auricle.energy;

import auricle.geometry.Vectors;
import auricle.mesh.Topology;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/** Small meshes, seeded disorder and rigid motions for the tests of the terms. */
final class Shapes {
  private Shapes() {}

  /** A strip of n × m squares of side 1 in the plane z = 0, each cut in two. */
  static Topology grid(int n, int m) {
    int[] triangles = new int[6 * n * m];
    int at = 0;
    for (int j = 0; j < m; j++) {
      for (int i = 0; i < n; i++) {
        int a = j * (n + 1) + i;
        int b = a + n + 1;
        for (int v : new int[] {a, a + 1, b + 1, a, b + 1, b}) {
          triangles[at++] = v;
        }
      }
    }
    return new Topology((n + 1) * (m + 1), triangles);
  }

  /** Unknowns of the flat grid. */
  static double[] flat(int n, int m) {
    double[] u = new double[grid(n, m).unknowns().size()];
    for (int v = 0; v < (n + 1) * (m + 1); v++) {
      u[3 * v] = v % (n + 1);
      u[3 * v + 1] = Math.floorDiv(v, n + 1);
    }
    return u;
  }

  /** u with every number moved by up to ± amount. */
  static double[] shaken(double[] u, double amount, long seed) {
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
    double[] shaken = u.clone();
    for (int i = 0; i < u.length; i++) {
      shaken[i] += amount * (2 * random.nextDouble() - 1);
    }
    return shaken;
  }

  /** The first 3 V unknowns turned about a skew axis and shifted. */
  static double[] rigidlyMoved(double[] u, int vertexCount, double angle) {
    double[] axis = Vectors.unit(new double[] {1, -2, 0.5});
    double[] moved = u.clone();
    for (int v = 0; v < vertexCount; v++) {
      double[] x = Vectors.at(u, 3 * v);
      double[] turned = Vectors.scale(Math.cos(angle), x);
      turned = Vectors.add(turned, Math.sin(angle), Vectors.cross(axis, x));
      turned = Vectors.add(turned, (1 - Math.cos(angle)) * Vectors.dot(axis, x), axis);
      turned = Vectors.add(turned, 1, new double[] {3, -7, 11});
      System.arraycopy(turned, 0, moved, 3 * v, 3);
    }
    return moved;
  }

  /** Sum of all contributions. */
  static double energy(EnergyTerm term, double[] u) {
    double energy = 0;
    for (int i = 0; i < term.count(); i++) {
      energy += term.value(i, u);
    }
    return energy;
  }

  /** Gradient of the sum of all contributions by all unknowns. */
  static double[] gradient(EnergyTerm term, double[] u) {
    double[] all = new double[u.length];
    for (int i = 0; i < term.count(); i++) {
      int n = term.stencil(i).length;
      double[] local = new double[n];
      term.derivatives(i, u, local, new double[n * n]);
      for (int k = 0; k < n; k++) {
        all[term.stencil(i)[k]] += local[k];
      }
    }
    return all;
  }

  /** The largest size of a number. */
  static double largest(double[] values) {
    double largest = 0;
    for (double v : values) {
      largest = Math.max(largest, Math.abs(v));
    }
    return largest;
  }
}
