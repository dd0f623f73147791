package auricle.crosssolver;

import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * The body of a {@link WedgeModel}, each wedge split into three 20-node bricks with reduced
 * integration (C3D20R) at its middle: the same body, more finely and with a better element. Nodes 1
 * to V are the middle nodes of the V vertices of the shell.
 */
final class BrickSplit {
  private static final int[] NEXT = {1, 2, 0};

  private final ShellMesh mesh;
  private final Topology topology;
  private final double[][] vertices;
  private final double[][] edges;
  private final Map<String, Integer> numbers = new HashMap<>();
  private final List<double[]> places = new ArrayList<>();
  private final StringBuilder elements = new StringBuilder("*ELEMENT, TYPE=C3D20R, ELSET=SHELL\n");
  private int count;

  BrickSplit(ShellMesh mesh, double thickness) {
    this.mesh = mesh;
    topology = mesh.topology();
    vertices = new double[2][3 * mesh.vertexCount()];
    edges = new double[2][3 * topology.edgeCount()];
    for (int face = 0; face < 2; face++) {
      layVertices(vertices[face], (face - 0.5) * thickness);
      layEdges(edges[face], (face - 0.5) * thickness);
    }
    for (int v = 0; v < mesh.vertexCount(); v++) {
      node(
          "V" + v + "m",
          new double[] {mesh.position(v, 0), mesh.position(v, 1), mesh.position(v, 2)});
    }
    for (int t = 0; t < topology.triangleCount(); t++) {
      for (int corner = 0; corner < 3; corner++) {
        brick(t, corner);
      }
    }
  }

  private void layVertices(double[] out, double height) {
    double[] n = mesh.normals();
    for (int i = 0; i < out.length; i++) {
      out[i] = mesh.positions()[i] + height * n[i];
    }
  }

  private void layEdges(double[] out, double height) {
    double[] x = mesh.positions();
    double[] n = mesh.normals();
    for (int e = 0; e < topology.edgeCount(); e++) {
      double[] middle = new double[3];
      double[] normal = new double[3];
      WedgeModel.middle(x, n, 3 * topology.edgeStart(e), 3 * topology.edgeEnd(e), middle, normal);
      for (int c = 0; c < 3; c++) {
        out[3 * e + c] = middle[c] + height * normal[c];
      }
    }
  }

  /**
   * The brick at a corner of a triangle: corner, middles of its two edges, middle of the triangle.
   */
  private void brick(int t, int corner) {
    double[][] at = corners(corner);
    String[] names = names(t, corner);
    int[] node = new int[20];
    for (int k = 0; k < 8; k++) {
      int place = k < 4 ? k : k + 4;
      node[place] = node(names[k] + "b", place(t, at[k], 0));
      node[place + 4] = node(names[k] + "t", place(t, at[k], 1));
    }
    for (int k = 0; k < 4; k++) {
      double[] under = place(t, at[k], 0);
      double[] upper = place(t, at[k], 1);
      double[] half = new double[3];
      for (int c = 0; c < 3; c++) {
        half[c] = (under[c] + upper[c]) / 2;
      }
      node[16 + k] = node(names[k] + "m", half);
    }
    elements.append(++count);
    for (int k = 0; k < 20; k++) {
      elements.append(k == 14 ? ",\n" : ",").append(node[k]);
    }
    elements.append('\n');
  }

  private static double[][] corners(int corner) {
    double[][] at = new double[8][3];
    int second = NEXT[corner];
    int third = NEXT[second];
    at[0][corner] = 1;
    at[1][corner] = 0.5;
    at[1][second] = 0.5;
    java.util.Arrays.fill(at[2], 1 / 3.0);
    at[3][corner] = 0.5;
    at[3][third] = 0.5;
    for (int k = 0; k < 4; k++) {
      for (int c = 0; c < 3; c++) {
        at[4 + k][c] = (at[k][c] + at[(k + 1) % 4][c]) / 2;
      }
    }
    return at;
  }

  private String[] names(int t, int corner) {
    int vertex = topology.vertex(t, corner);
    int toSecond = topology.edge(t, NEXT[NEXT[corner]]);
    int toThird = topology.edge(t, NEXT[corner]);
    return new String[] {
      "V" + vertex,
      "E" + toSecond,
      "T" + t,
      "E" + toThird,
      "Q" + toSecond + "_" + vertex,
      "S" + t + "_" + toSecond,
      "S" + t + "_" + toThird,
      "Q" + toThird + "_" + vertex
    };
  }

  /** A place on a face of the wedge's body, by its six nodes there. */
  private double[] place(int t, double[] weight, int face) {
    double[] p = new double[3];
    for (int i = 0; i < 3; i++) {
      double corner = weight[i] * (2 * weight[i] - 1);
      double edge = 4 * weight[NEXT[i]] * weight[NEXT[NEXT[i]]];
      for (int c = 0; c < 3; c++) {
        p[c] += corner * vertices[face][3 * topology.vertex(t, i) + c];
        p[c] += edge * edges[face][3 * topology.edge(t, i) + c];
      }
    }
    return p;
  }

  private int node(String name, double[] place) {
    return numbers.computeIfAbsent(
        name,
        n -> {
          places.add(place);
          return places.size();
        });
  }

  /** Shares of the eight nodes of a brick's face in what a place on it does. */
  void shares(SpreadBite.Spot spot, boolean upper, double share, Map<Integer, Double> to) {
    int corner = 0;
    for (int i = 1; i < 3; i++) {
      corner = spot.weight()[i] > spot.weight()[corner] ? i : corner;
    }
    double[] at = inBrick(spot.weight()[NEXT[corner]], spot.weight()[NEXT[NEXT[corner]]]);
    String[] names = names(spot.triangle(), corner);
    double[] shape = shape(at[0], at[1]);
    for (int k = 0; k < 8; k++) {
      Integer node = numbers.get(names[k] + (upper ? "t" : "b"));
      to.merge(Objects.requireNonNull(node), share * shape[k], Double::sum);
    }
  }

  /** Coordinates of -1 to 1 in the brick at a corner, of the weights of the other two corners. */
  private static double[] inBrick(double second, double third) {
    double r = -1;
    double s = -1;
    for (int k = 0; k < 30; k++) {
      // of corner, middle to the second, middle of the triangle, middle to the third
      double a = (1 + r) * (1 - s) / 4;
      double b = (1 + r) * (1 + s) / 4;
      double c = (1 - r) * (1 + s) / 4;
      double f = a / 2 + b / 3 - second;
      double g = c / 2 + b / 3 - third;
      double fr = (1 - s) / 8 + (1 + s) / 12;
      double fs = -(1 + r) / 8 + (1 + r) / 12;
      double gr = -(1 + s) / 8 + (1 + s) / 12;
      double gs = (1 - r) / 8 + (1 + r) / 12;
      double determinant = fr * gs - fs * gr;
      r -= (f * gs - fs * g) / determinant;
      s -= (fr * g - f * gr) / determinant;
    }
    return new double[] {r, s};
  }

  /** The eight functions of a face: corners, then middles of the sides. */
  private static double[] shape(double r, double s) {
    int[][] corner = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}};
    double[] n = new double[8];
    for (int k = 0; k < 4; k++) {
      double a = corner[k][0] * r;
      double b = corner[k][1] * s;
      n[k] = (1 + a) * (1 + b) * (a + b - 1) / 4;
    }
    n[4] = (1 - r * r) * (1 - s) / 2;
    n[5] = (1 + r) * (1 - s * s) / 2;
    n[6] = (1 - r * r) * (1 + s) / 2;
    n[7] = (1 - r) * (1 - s * s) / 2;
    return n;
  }

  int nodeCount() {
    return places.size();
  }

  int elementCount() {
    return count;
  }

  /** Nodes and elements as the other solver reads them. */
  String text() {
    StringBuilder out = new StringBuilder("*NODE, NSET=ALL\n");
    for (int k = 0; k < places.size(); k++) {
      double[] p = places.get(k);
      out.append(String.format(Locale.ROOT, "%d,%.12g,%.12g,%.12g%n", k + 1, p[0], p[1], p[2]));
    }
    return out.append(elements).toString();
  }
}
