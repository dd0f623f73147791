package auricle.energy;

import auricle.geometry.PlateFrame;
import auricle.geometry.TrianglePlace;
import auricle.geometry.Vectors;
import auricle.mesh.Topology;

/**
 * A bite: a point that rides on a triangle at barycentric weights β, held off the mid-surface along
 * the triangle's unit normal.
 *
 * <pre>
 *   p = Σ_i β_i x_i + h n
 * </pre>
 *
 * <p>The offset h is signed: positive on the side the normal points to, negative under it; half a
 * thickness puts the bite on a face of the shell. The normal is that of the flat triangle, so
 * across an edge the bite's lever jumps by the angle between the two plates (of the order of the
 * mesh size). Where the triangle is squashed its normal turns over within a hair's breadth; the
 * {@link Lever} of a point that knows its triangle at rest gets shorter there instead.
 *
 * <p>Nine unknowns: x, y, z of corners 0, 1, 2.
 */
public final class SurfacePoint implements MaterialPoint {
  private static final double WEIGHT_TOLERANCE = 1e-9;
  private static final double BESIDE = 1;

  /** Share of its area at rest below which a triangle counts as squashed. */
  private static final double SQUASHED = 0.4;

  private final int[] unknowns = new int[9];
  private final double[] weight;
  private final double offset;

  /** Twice the area of the triangle below which it is squashed, mm²; 0: never. */
  private final double squashed;

  /**
   * @param topology the mesh
   * @param triangle index of the triangle
   * @param weight1 barycentric weight of corner 1, 0 … 1
   * @param weight2 barycentric weight of corner 2, 0 … 1; corner 0 has the rest
   * @param offset_mm signed distance from the mid-surface along the normal
   * @throws IllegalArgumentException if the point is outside the triangle or not finite
   */
  public SurfacePoint(
      Topology topology, int triangle, double weight1, double weight2, double offset_mm) {
    this(topology, triangle, new TrianglePlace(weight1, weight2, offset_mm), WEIGHT_TOLERANCE, 0);
  }

  /**
   * A point that a triangle carries, wherever it is at rest: on a curved surface it does not lie
   * straight above the flat triangle, and its foot may be a little outside of it.
   *
   * @param rest unknowns of the mesh at rest
   * @param point x, y, z of the point at rest, mm
   * @throws IllegalArgumentException if the foot is farther outside than the triangle is high
   */
  public static SurfacePoint carried(
      Topology topology, int triangle, double[] rest, double[] point) {
    double[][] x = new double[3][];
    for (int i = 0; i < 3; i++) {
      x[i] = Vectors.at(rest, topology.unknowns().vertex(topology.vertex(triangle, i)));
    }
    double squashed = 2 * SQUASHED * new PlateFrame(x[0], x[1], x[2]).area();
    TrianglePlace place = TrianglePlace.of(x[0], x[1], x[2], point);
    return new SurfacePoint(topology, triangle, place, BESIDE, squashed);
  }

  private SurfacePoint(
      Topology topology, int triangle, TrianglePlace place, double outside, double squashed) {
    this.squashed = squashed;
    this.weight =
        new double[] {1 - place.weight1() - place.weight2(), place.weight1(), place.weight2()};
    this.offset = place.height();
    for (double w : weight) {
      if (!(w >= -outside) || !Double.isFinite(offset)) {
        throw new IllegalArgumentException(
            "weights %s, %s and offset %s name no point of triangle %d"
                .formatted(weight[1], weight[2], offset, triangle));
      }
    }
    for (int i = 0; i < 3; i++) {
      for (int a = 0; a < 3; a++) {
        unknowns[3 * i + a] = topology.unknowns().vertex(topology.vertex(triangle, i)) + a;
      }
    }
  }

  @Override
  public int[] unknowns() {
    return unknowns;
  }

  private double[] corner(double[] u, int i) {
    return Vectors.at(u, unknowns[3 * i]);
  }

  private Lever lever(double[] u) {
    return new Lever(corner(u, 0), corner(u, 1), corner(u, 2), squashed);
  }

  @Override
  public double[] position(double[] u) {
    double[] p = offset == 0 ? new double[3] : Vectors.scale(offset, lever(u).direction());
    for (int i = 0; i < 3; i++) {
      p = Vectors.add(p, weight[i], corner(u, i));
    }
    return p;
  }

  @Override
  public double[] jacobian(double[] u) {
    double[] jacobian = new double[27];
    lever(u).addJacobian(offset, jacobian);
    for (int a = 0; a < 3; a++) {
      for (int i = 0; i < 3; i++) {
        jacobian[a * 9 + 3 * i + a] += weight[i];
      }
    }
    return jacobian;
  }

  @Override
  public void addCurvature(double[] u, double[] w, double[] hessian) {
    if (offset != 0) {
      lever(u).addCurvature(Vectors.scale(offset, w), hessian);
    }
  }
}
