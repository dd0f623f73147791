package auricle.energy;

import auricle.geometry.Vectors;
import auricle.mesh.Directors;
import auricle.mesh.Topology;
import java.util.Map;
import java.util.TreeMap;

/**
 * Moments about an axis fixed in space, on the directors of chosen vertices.
 *
 * <pre>
 *   W = −λ Σ_i M_i θ_i
 * </pre>
 *
 * <p>θ_i is the angle by which director i has turned about the unit axis a, right-handed, seen
 * along a ({@link TurnAngle}); M_i in N·mm; λ the load factor. Where the director stays in the
 * plane normal to a (an end moment that rolls a strip up) this is a moment of constant size through
 * any number of turns. Elsewhere it is the conservative moment that does work on θ; the moment
 * about a that a director out of that plane feels is the same, but it has a part across a as well.
 * A director may not point along a.
 *
 * <p>The angle counts from the present frames, so the energy drops by a constant when these are
 * laid anew between iterations; forces do not. One contribution a director, stencil its two tilts.
 */
public final class DirectorMoment implements EnergyTerm {
  private static final double ALONG_AXIS = 0.999;

  private final String name;
  private final Directors directors;
  private final double[] axis;
  private final int[] loaded;
  private final int[][] stencils;
  private final double[] moments;
  private double loadFactor = 1;

  /**
   * @param name what it is called in messages
   * @param directors the frames that the tilts are measured in
   * @param axis a; made a unit vector here
   * @param moment_n_mm M by director, N·mm
   * @throws IllegalArgumentException if a loaded director points along the axis
   */
  public DirectorMoment(
      String name, Directors directors, double[] axis, Map<Integer, Double> moment_n_mm) {
    this.name = name;
    this.directors = directors;
    this.axis = Vectors.unit(axis);
    Map<Integer, Double> ascending = new TreeMap<>(moment_n_mm);
    this.loaded = ascending.keySet().stream().mapToInt(Integer::intValue).toArray();
    this.moments = ascending.values().stream().mapToDouble(Double::doubleValue).toArray();
    this.stencils = new int[loaded.length][];
    for (int i = 0; i < loaded.length; i++) {
      int first = directors.unknowns().director(loaded[i]);
      stencils[i] = new int[] {first, first + 1};
      if (Math.abs(Vectors.dot(this.axis, frame(loaded[i], 0))) > ALONG_AXIS) {
        throw new IllegalArgumentException(
            "%s: director %d points along the axis of the moment".formatted(name, loaded[i]));
      }
    }
  }

  /**
   * The moments of a line moment, per rest length, on edges whose vertices have one director each,
   * numbered like them: half of every edge's moment to each end.
   *
   * @param moment_n M per length, N·mm/mm
   * @return moment by director, N·mm
   */
  public static Map<Integer, Double> onEdges(
      Topology topology, double[] rest, int[] edges, double moment_n) {
    Map<Integer, Double> moments = new TreeMap<>();
    for (int e : edges) {
      int a = topology.edgeStart(e);
      int b = topology.edgeEnd(e);
      double length =
          Vectors.norm(Vectors.subtract(Vectors.at(rest, 3 * b), Vectors.at(rest, 3 * a)));
      moments.merge(a, moment_n * length / 2, Double::sum);
      moments.merge(b, moment_n * length / 2, Double::sum);
    }
    return moments;
  }

  @Override
  public void setLoadFactor(double loadFactor) {
    this.loadFactor = loadFactor;
  }

  @Override
  public boolean countsFromFrames() {
    return true;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public int count() {
    return loaded.length;
  }

  @Override
  public int[] stencil(int i) {
    return stencils[i];
  }

  private double[] frame(int director, int k) {
    return new double[] {
      directors.frame(director, k, 0),
      directors.frame(director, k, 1),
      directors.frame(director, k, 2)
    };
  }

  private TurnAngle turn(int i, double[] u) {
    int d = loaded[i];
    return new TurnAngle(
        axis, frame(d, 0), frame(d, 1), frame(d, 2), u[stencils[i][0]], u[stencils[i][1]]);
  }

  @Override
  public double value(int i, double[] u) {
    return -loadFactor * moments[i] * turn(i, u).angle();
  }

  @Override
  public double derivatives(int i, double[] u, double[] gradient, double[] hessian) {
    TurnAngle turn = turn(i, u);
    double scale = -loadFactor * moments[i];
    for (int k = 0; k < 2; k++) {
      gradient[k] = scale * turn.slope(k);
      for (int l = 0; l < 2; l++) {
        hessian[2 * k + l] = scale * turn.bend(k, l);
      }
    }
    return scale * turn.angle();
  }
}
