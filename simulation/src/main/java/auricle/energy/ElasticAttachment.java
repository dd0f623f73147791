package auricle.energy;

import auricle.geometry.Vectors;
import java.util.Arrays;

/**
 * Vertices bedded elastically at their rest places, as cartilage is on the tissue under it.
 *
 * <pre>
 *   W = Σ_v ½ A_v [ k_n (n·d)² + k_t |d − n (n·d)|² ],   d = x_v − X_v
 * </pre>
 *
 * <p>k_n and k_t are bedding stiffnesses, N/mm per mm² = MPa/mm, along and across the rest normal
 * n, which stays fixed in space. One contribution a vertex, stencil x, y, z. Director angles are
 * not held: a patch of several vertices resists rotation by their distances.
 */
public final class ElasticAttachment implements EnergyTerm {
  private final String name;
  private final int[][] stencils;
  private final double[][] stiffness;
  private final double[] rest;

  /**
   * @param name what it is called in messages
   * @param vertices which vertices are held
   * @param areas_mm2 area of each of them
   * @param normals rest unit normal of each, three numbers a vertex of the list
   * @param rest unknowns at rest; the coordinates X are taken from here
   * @param normal_mpa_per_mm k_n ≥ 0
   * @param tangential_mpa_per_mm k_t ≥ 0
   * @throws IllegalArgumentException if lengths differ, a stiffness is negative or a normal is none
   */
  public ElasticAttachment(
      String name,
      int[] vertices,
      double[] areas_mm2,
      double[] normals,
      double[] rest,
      double normal_mpa_per_mm,
      double tangential_mpa_per_mm) {
    if (areas_mm2.length != vertices.length
        || normals.length != 3 * vertices.length
        || !(normal_mpa_per_mm >= 0)
        || !(tangential_mpa_per_mm >= 0)) {
      throw new IllegalArgumentException(
          "%s: %d vertices, %d areas, %d normal coordinates, stiffness %s and %s MPa/mm"
              .formatted(
                  name,
                  vertices.length,
                  areas_mm2.length,
                  normals.length,
                  normal_mpa_per_mm,
                  tangential_mpa_per_mm));
    }
    this.name = name;
    this.rest = rest.clone();
    this.stencils = new int[vertices.length][];
    this.stiffness = new double[vertices.length][9];
    for (int i = 0; i < vertices.length; i++) {
      stencils[i] = new VertexPoint(vertices[i]).unknowns();
      double[] n = Vectors.unit(Vectors.at(normals, 3 * i));
      for (int e = 0; e < 9; e++) {
        double along = n[e / 3] * n[e % 3];
        double across = (e % 4 == 0 ? 1 : 0) - along;
        stiffness[i][e] =
            areas_mm2[i] * (normal_mpa_per_mm * along + tangential_mpa_per_mm * across);
      }
    }
  }

  /** The same stiffness in all directions, MPa/mm. */
  public static ElasticAttachment isotropic(
      String name, int[] vertices, double[] areas_mm2, double[] rest, double stiffness_mpa_per_mm) {
    double[] anyNormals = new double[3 * vertices.length];
    Arrays.fill(anyNormals, 1);
    return new ElasticAttachment(
        name, vertices, areas_mm2, anyNormals, rest, stiffness_mpa_per_mm, stiffness_mpa_per_mm);
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public int count() {
    return stencils.length;
  }

  @Override
  public int[] stencil(int i) {
    return stencils[i];
  }

  @Override
  public double value(int i, double[] u) {
    return Vectors.dot(displacement(i, u), pull(i, u)) / 2;
  }

  @Override
  public double derivatives(int i, double[] u, double[] gradient, double[] hessian) {
    System.arraycopy(pull(i, u), 0, gradient, 0, 3);
    System.arraycopy(stiffness[i], 0, hessian, 0, 9);
    return value(i, u);
  }

  private double[] displacement(int i, double[] u) {
    int at = stencils[i][0];
    return Vectors.subtract(Vectors.at(u, at), Vectors.at(rest, at));
  }

  private double[] pull(int i, double[] u) {
    double[] d = displacement(i, u);
    double[] k = stiffness[i];
    return new double[] {
      k[0] * d[0] + k[1] * d[1] + k[2] * d[2],
      k[3] * d[0] + k[4] * d[1] + k[5] * d[2],
      k[6] * d[0] + k[7] * d[1] + k[8] * d[2]
    };
  }
}
