package auricle.analysis;

import auricle.diagnostics.Findings;
import auricle.energy.ElasticAttachment;
import auricle.energy.EnergyTerm;
import auricle.equilibrium.Supports;
import auricle.geometry.Vectors;
import auricle.mesh.Directors;
import auricle.mesh.ShellMesh;
import auricle.mesh.Unknowns;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Supports of a model on its unknowns. Directions along x, y, z are held exactly. A direction askew
 * to them is held by a stiff spring, {@link #STIFF} times the largest membrane stiffness of the
 * shell: what it gives way by is that much less than the shell's own stretch.
 */
final class SupportPlan {
  /** Stiffness of the springs that hold askew directions, in membrane stiffnesses A11. */
  static final double STIFF = 1e6;

  private static final double ALONG = 1 - 1e-12;

  private final ShellMesh mesh;
  private final MeshSets sets;
  private final Findings findings;
  private final Directors directors;
  private final Unknowns unknowns;
  private final Map<Integer, String> held = new TreeMap<>();
  private final Map<Integer, String> moved = new TreeMap<>();
  private final Map<Integer, Double> amounts = new TreeMap<>();
  private final Map<Integer, DirectorHold> tilts = new TreeMap<>();
  private final List<AskewSupport> askew = new ArrayList<>();
  private double largestTurn;

  /**
   * @param directors turned here so that their tilts lie along what is held
   */
  SupportPlan(
      ShellMesh mesh,
      Directors directors,
      List<Support> supports,
      MeshSets sets,
      Findings findings) {
    this.mesh = mesh;
    this.directors = directors;
    this.unknowns = directors.unknowns();
    this.sets = sets;
    this.findings = findings;
    supports.forEach(this::add);
    tilts.forEach((vertex, hold) -> hold.align(directors, vertex, findings));
    moved.forEach(this::checkMoved);
  }

  private void checkMoved(int unknown, String at) {
    String other = held.get(unknown);
    if (other != null) {
      findings.error(
          at,
          "vertex " + unknown / 3 + " is moved along " + "xyz".charAt(unknown % 3) + " and held",
          "one of the two",
          "The other support is at " + other.replaceFirst("^/", "") + ".");
    }
  }

  private void add(Support support) {
    for (int vertex : sets.find(support.where()).vertices()) {
      support.hold(vertex, this);
    }
  }

  /** A direction as a unit vector; a finding if it has none. */
  double[] unit(String at, Triple direction) {
    return sets.unit(at, direction);
  }

  /** Holds a vertex in all directions. */
  void holdAxes(int vertex, String at) {
    for (int c = 0; c < 3; c++) {
      held.putIfAbsent(unknowns.vertex(vertex) + c, at);
    }
  }

  /** Holds a vertex along a unit vector. */
  void holdAlong(int vertex, double[] direction, String at) {
    for (int c = 0; c < 3; c++) {
      if (Math.abs(direction[c]) > ALONG) {
        held.putIfAbsent(unknowns.vertex(vertex) + c, at);
        return;
      }
    }
    askew.add(new AskewSupport(vertex, direction[0], direction[1], direction[2]));
  }

  /** Moves a vertex by as much at load factor 1, mm; components without a number stay free. */
  void move(int vertex, Triple displacement, String at) {
    double[] amount = displacement.array();
    for (int c = 0; c < 3; c++) {
      if (!Double.isNaN(amount[c])) {
        moved.put(unknowns.vertex(vertex) + c, at);
        amounts.put(unknowns.vertex(vertex) + c, amount[c]);
      }
    }
  }

  /** Turns the director of a vertex about a unit vector by an angle at load factor 1, rad. */
  void turn(int vertex, double[] axis, double angle, String at) {
    largestTurn = Math.max(largestTurn, Math.abs(angle));
    hold(vertex, DirectorHold.turned(at, axis, angle));
  }

  /** Holds the director of a vertex. */
  void hold(int vertex, DirectorHold hold) {
    tilts.merge(vertex, hold, DirectorHold::and);
  }

  /** The supports. */
  Supports build() {
    Supports.Builder builder = new Supports.Builder(unknowns.size(), 3 * unknowns.vertexCount());
    held.keySet().forEach(builder::fix);
    amounts.forEach(builder::prescribe);
    tilts.forEach((vertex, hold) -> hold.apply(builder, unknowns.director(vertex)));
    return builder.build();
  }

  /** Displacements of moved unknowns at load factor 1, mm or rad. */
  Map<Integer, Double> amounts() {
    Map<Integer, Double> all = new TreeMap<>(amounts);
    tilts.forEach((vertex, hold) -> hold.amounts(unknowns.director(vertex), all));
    return all;
  }

  /** Largest turn prescribed at load factor 1, rad. */
  double largestTurn() {
    return largestTurn;
  }

  /** Springs for askew directions, one term a support. */
  List<EnergyTerm> springs(double stiffness_n_per_mm) {
    List<EnergyTerm> springs = new ArrayList<>();
    for (AskewSupport s : askew) {
      springs.add(
          new ElasticAttachment(
              "support of vertex " + s.vertex(),
              new int[] {s.vertex()},
              new double[] {1},
              s.direction(),
              mesh.unknowns(),
              STIFF * stiffness_n_per_mm,
              0));
    }
    return springs;
  }

  /** What askew supports exert on a vertex that has moved by d, N. */
  double[] springForce(int vertex, double[] d, double stiffness_n_per_mm) {
    double[] sum = new double[3];
    for (AskewSupport s : askew) {
      if (s.vertex() == vertex) {
        double force = -STIFF * stiffness_n_per_mm * Vectors.dot(s.direction(), d);
        sum = Vectors.add(sum, force, s.direction());
      }
    }
    return sum;
  }

  /** Tells every single motion that is prevented to a check for mechanisms. */
  void describeTo(RigidMotions motions) {
    held.keySet().forEach(motions::holdCoordinate);
    amounts.keySet().forEach(motions::holdCoordinate);
    askew.forEach(s -> motions.holdAlong(s.vertex(), s.direction()));
    tilts.forEach(
        (vertex, hold) -> {
          for (int k = 0; k < 2; k++) {
            if (hold.holds(k)) {
              motions.holdTilt(directors, vertex, k);
            }
          }
        });
  }
}
