package auricle.crosssolver;

import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;

/**
 * A shell mesh as a layer of 15-node wedges (C3D15) with supports and dead forces.
 *
 * <p>Every vertex becomes three nodes (under side, middle, upper side), every edge two (under,
 * upper) at the middle of the cubic that is at right angles to both end normals.
 */
final class WedgeModel {
  /** Which face of the shell a force acts on. */
  enum Face {
    UNDER,
    MIDDLE,
    UPPER
  }

  /** The default residual tolerance of half a per cent is too loose for a comparison. */
  private static final String LARGE =
      "*STEP, NLGEOM, INC=500\n*STATIC\n%s,1.,1e-6,0.2\n*CONTROLS, PARAMETERS=FIELD\n1e-4,1e-3";

  /** Steps of temperature in which the law of a thread is told. */
  private static final int TEMPERATURES = 10;

  private final ShellMesh mesh;
  private final double thickness;
  private final Map<Integer, Set<Integer>> fixed = new TreeMap<>();
  private final Map<Integer, double[]> forces = new TreeMap<>();
  private final List<String> equations = new ArrayList<>();
  private final List<Double> closings = new ArrayList<>();
  private final Map<Integer, Double> springs = new TreeMap<>();
  private final List<Thread> threads = new ArrayList<>();
  private final double modulus;
  private final double poisson;

  WedgeModel(ShellMesh mesh, double thickness, double modulus, double poisson) {
    this.mesh = mesh;
    this.thickness = thickness;
    this.modulus = modulus;
    this.poisson = poisson;
  }

  int node(int vertex, Face face) {
    return 3 * vertex + face.ordinal() + 1;
  }

  private int edgeNode(int edge, boolean upper) {
    return 3 * mesh.vertexCount() + 2 * edge + (upper ? 2 : 1);
  }

  /**
   * Fixes directions (1, 2, 3) of all nodes through the thickness of vertices and edges between.
   */
  void fix(List<Integer> vertices, List<Integer> directions) {
    Set<Integer> in = Set.copyOf(vertices);
    for (int v : vertices) {
      for (Face face : Face.values()) {
        fixNode(node(v, face), directions);
      }
    }
    Topology t = mesh.topology();
    for (int e = 0; e < t.edgeCount(); e++) {
      if (in.contains(t.edgeStart(e)) && in.contains(t.edgeEnd(e)) && t.isBoundary(e)) {
        fixNode(edgeNode(e, false), directions);
        fixNode(edgeNode(e, true), directions);
      }
    }
  }

  /** Fixes one direction of the middle node of a vertex. */
  void fixPoint(int vertex, int direction) {
    fixNode(node(vertex, Face.MIDDLE), List.of(direction));
  }

  private void fixNode(int node, List<Integer> directions) {
    fixed.computeIfAbsent(node, n -> new java.util.TreeSet<>()).addAll(directions);
  }

  /** Adds a dead force, N. */
  void force(int vertex, Face face, double fx, double fy, double fz) {
    double[] f = forces.computeIfAbsent(node(vertex, face), n -> new double[3]);
    f[0] += fx;
    f[1] += fy;
    f[2] += fz;
  }

  /**
   * Brings the middle nodes of two vertices together along a fixed direction by a given amount,
   * which pulls them with two opposite forces along it: a thread in the state that it reaches, and
   * stable on the way there, which dead forces are not.
   */
  void close(int from, int to, double[] direction, double amount) {
    int pilot = pilot(closings.size());
    StringBuilder terms = new StringBuilder("*EQUATION\n7\n");
    for (int c = 0; c < 3; c++) {
      // the largest term first: it is the one that is eliminated
      int axis = (largest(direction) + c) % 3;
      terms.append(
          String.format(
              Locale.ROOT,
              "%d,%d,%.12g,%d,%d,%.12g,%n",
              node(from, Face.MIDDLE),
              axis + 1,
              direction[axis],
              node(to, Face.MIDDLE),
              axis + 1,
              -direction[axis]));
    }
    equations.add(terms.append(pilot).append(",1,-1.\n").toString());
    closings.add(amount);
  }

  /** A spring from the middle node of a vertex to its rest place, alike in all directions, N/mm. */
  void spring(int vertex, double stiffness) {
    springs.merge(vertex, stiffness, Double::sum);
  }

  /**
   * A thread between two bites: a spring that pulls with stiffness, N/mm, once it is longer than
   * its first length less a shortening, mm, which grows as a temperature rises from 0 to 1 with the
   * load.
   */
  void thread(SpreadBite from, SpreadBite to, double stiffness, double shortening) {
    threads.add(new Thread(from, to, stiffness, shortening));
  }

  private record Thread(SpreadBite from, SpreadBite to, double stiffness, double shortening) {
    /** Force by elongation at temperatures between: the shortening comes on bit by bit. */
    String law() {
      double far = 100;
      StringBuilder out = new StringBuilder("\n");
      for (int k = 0; k <= TEMPERATURES; k++) {
        double temperature = k / (double) TEMPERATURES;
        double shorter = temperature * shortening;
        out.append(
            String.format(
                Locale.ROOT,
                "%n0.,%f,%f%n0.,%f,%f%n%f,%f,%f",
                -far,
                temperature,
                -shorter,
                temperature,
                stiffness * (far + shorter),
                far,
                temperature));
      }
      return out.toString();
    }
  }

  private static int largest(double[] d) {
    int k = Math.abs(d[1]) > Math.abs(d[0]) ? 1 : 0;
    return Math.abs(d[2]) > Math.abs(d[k]) ? 2 : k;
  }

  private int pilot(int k) {
    return 3 * mesh.vertexCount() + 2 * mesh.topology().edgeCount() + 1 + k;
  }

  int vertexCount() {
    return mesh.vertexCount();
  }

  /** The number of the middle node of a vertex if wedges are split into bricks. */
  static int brickNode(int vertex) {
    return vertex + 1;
  }

  /**
   * The input file with every wedge split into bricks; for forces and springs at middle nodes
   * alone.
   *
   * @param large whether displacements are large; else one linear step
   */
  String bricks(boolean large) {
    StringBuilder out = new StringBuilder("*HEADING\nshell of one layer of bricks\n");
    BrickSplit bricks = new BrickSplit(mesh, thickness);
    out.append(bricks.text());
    springs(
        out, bricks.elementCount(), WedgeModel::brickNode, bricks.nodeCount() + 1, bricks::shares);
    line(out, "*NSET, NSET=MIDDLE, GENERATE");
    line(out, "1," + mesh.vertexCount());
    material(out);
    coldStart(out);
    line(out, large ? LARGE.formatted(0.2) : "*STEP\n*STATIC");
    if (!forces.isEmpty()) {
      line(out, "*CLOAD");
    }
    forces.forEach((n, f) -> force(out, brickNode((n - 2) / 3), f));
    heat(out);
    line(out, "*NODE PRINT, NSET=MIDDLE, FREQUENCY=1000\nU\n*END STEP");
    return out.toString();
  }

  private void coldStart(StringBuilder out) {
    if (!threads.isEmpty()) {
      line(out, "*INITIAL CONDITIONS, TYPE=TEMPERATURE\nALL,0");
    }
  }

  private void heat(StringBuilder out) {
    if (!threads.isEmpty()) {
      line(out, "*TEMPERATURE\nALL,1");
    }
  }

  /** The input file. */
  String input(double firstIncrement) {
    StringBuilder out = new StringBuilder("*HEADING\nshell of one layer of wedges\n");
    out.append("*NODE, NSET=ALL\n");
    nodes(out);
    for (int k = 0; k < closings.size(); k++) {
      line(out, pilot(k) + "," + k + ",0,0");
    }
    out.append("*ELEMENT, TYPE=C3D15, ELSET=SHELL\n");
    elements(out);
    springs(
        out,
        mesh.topology().triangleCount(),
        v -> node(v, Face.MIDDLE),
        pilot(closings.size()),
        this::shares);
    out.append("*NSET, NSET=MIDDLE\n");
    for (int v = 0; v < mesh.vertexCount(); v++) {
      out.append(node(v, Face.MIDDLE)).append('\n');
    }
    material(out);
    line(out, "*BOUNDARY");
    fixed.forEach((n, directions) -> directions.forEach(d -> line(out, n + "," + d + "," + d)));
    equations.forEach(out::append);
    coldStart(out);
    line(out, LARGE.formatted(firstIncrement));
    if (!forces.isEmpty()) {
      out.append("*CLOAD\n");
    }
    forces.forEach((n, f) -> force(out, n, f));
    if (!closings.isEmpty()) {
      out.append("*BOUNDARY\n");
    }
    for (int k = 0; k < closings.size(); k++) {
      line(out, pilot(k) + ",1,1," + closings.get(k));
    }
    heat(out);
    out.append("*NODE PRINT, NSET=MIDDLE, FREQUENCY=1000\nU\n*END STEP\n");
    return out.toString();
  }

  private void material(StringBuilder out) {
    line(out, "*MATERIAL, NAME=M\n*ELASTIC\n" + modulus + "," + poisson);
    line(out, "*SOLID SECTION, ELSET=SHELL, MATERIAL=M");
  }

  private static void force(StringBuilder out, int node, double[] f) {
    for (int c = 0; c < 3; c++) {
      line(out, String.format(Locale.ROOT, "%d,%d,%.12g", node, c + 1, f[c]));
    }
  }

  private void springs(
      StringBuilder out,
      int before,
      IntUnaryOperator middle,
      int firstBite,
      BiteNodes.Shares shares) {
    int element = before;
    for (Map.Entry<Integer, Double> spring : springs.entrySet()) {
      for (int direction = 1; direction <= 3; direction++) {
        element++;
        line(out, "*ELEMENT, TYPE=SPRING1, ELSET=SPRING" + element);
        line(out, element + "," + middle.applyAsInt(spring.getKey()));
        line(out, "*SPRING, ELSET=SPRING" + element);
        line(out, String.format(Locale.ROOT, "%d%n%.12g", direction, spring.getValue()));
      }
    }
    int node = firstBite;
    for (Thread thread : threads) {
      element++;
      out.append("*NODE, NSET=ALL\n");
      out.append(BiteNodes.node(node, thread.from()));
      out.append(BiteNodes.node(node + 1, thread.to()));
      out.append(BiteNodes.equations(node, thread.from(), mesh, shares));
      out.append(BiteNodes.equations(node + 1, thread.to(), mesh, shares));
      line(out, "*ELEMENT, TYPE=SPRINGA, ELSET=THREAD" + element);
      line(out, element + "," + node + "," + (node + 1));
      line(out, "*SPRING, NONLINEAR, ELSET=THREAD" + element + thread.law());
      node += 2;
    }
  }

  /** Shares of the six nodes of a wedge's face. */
  private void shares(SpreadBite.Spot spot, boolean upper, double share, Map<Integer, Double> to) {
    Topology t = mesh.topology();
    for (int i = 0; i < 3; i++) {
      double w = spot.weight()[i];
      int corner = node(t.vertex(spot.triangle(), i), upper ? Face.UPPER : Face.UNDER);
      double middle = 4 * spot.weight()[(i + 1) % 3] * spot.weight()[(i + 2) % 3];
      to.merge(corner, share * w * (2 * w - 1), Double::sum);
      to.merge(edgeNode(t.edge(spot.triangle(), i), upper), share * middle, Double::sum);
    }
  }

  private static void line(StringBuilder out, String text) {
    out.append(text).append('\n');
  }

  private void nodes(StringBuilder out) {
    double[] x = mesh.positions();
    double[] n = mesh.normals();
    for (int v = 0; v < mesh.vertexCount(); v++) {
      for (Face face : Face.values()) {
        place(out, node(v, face), x, 3 * v, n, 3 * v, (face.ordinal() - 1) * thickness / 2);
      }
    }
    Topology t = mesh.topology();
    for (int e = 0; e < t.edgeCount(); e++) {
      double[] middle = new double[3];
      double[] normal = new double[3];
      middle(x, n, 3 * t.edgeStart(e), 3 * t.edgeEnd(e), middle, normal);
      place(out, edgeNode(e, false), middle, 0, normal, 0, -thickness / 2);
      place(out, edgeNode(e, true), middle, 0, normal, 0, thickness / 2);
    }
  }

  static void middle(double[] x, double[] n, int a, int b, double[] middle, double[] normal) {
    double tilt = 0;
    double length = 0;
    for (int c = 0; c < 3; c++) {
      tilt += (n[b + c] - n[a + c]) * (x[b + c] - x[a + c]);
      normal[c] = n[a + c] + n[b + c];
      length += normal[c] * normal[c];
    }
    for (int c = 0; c < 3; c++) {
      normal[c] /= Math.sqrt(length);
      middle[c] = (x[a + c] + x[b + c]) / 2 + tilt / 8 * normal[c];
    }
  }

  private static void place(
      StringBuilder out, int node, double[] x, int at, double[] n, int nat, double height) {
    out.append(
        String.format(
            Locale.ROOT,
            "%d,%.12g,%.12g,%.12g%n",
            node,
            x[at] + height * n[nat],
            x[at + 1] + height * n[nat + 1],
            x[at + 2] + height * n[nat + 2]));
  }

  private void elements(StringBuilder out) {
    Topology t = mesh.topology();
    for (int e = 0; e < t.triangleCount(); e++) {
      List<Integer> nodes = new ArrayList<>();
      for (Face face : new Face[] {Face.UNDER, Face.UPPER}) {
        for (int c = 0; c < 3; c++) {
          nodes.add(node(t.vertex(e, c), face));
        }
      }
      for (boolean upper : new boolean[] {false, true}) {
        for (int c = 0; c < 3; c++) {
          nodes.add(edgeNode(t.edge(e, (c + 2) % 3), upper));
        }
      }
      for (int c = 0; c < 3; c++) {
        nodes.add(node(t.vertex(e, c), Face.MIDDLE));
      }
      List<String> words = nodes.stream().map(String::valueOf).toList();
      line(out, (e + 1) + "," + String.join(",", words.subList(0, 9)) + ",");
      line(out, String.join(",", words.subList(9, 15)));
    }
  }
}
