package auricle.crosssolver;

import auricle.mesh.ParametricSurface;
import java.util.Locale;
import java.util.function.IntPredicate;

/**
 * A surface as one layer of 20-node bricks with reduced integration (C3D20R): what CalculiX makes
 * of its eight-node shell S8R, written out so that supports stand on nodes through the thickness.
 * For timing.
 */
final class BrickModel {
  private final int first;
  private final int second;
  private final StringBuilder nodes = new StringBuilder();
  private final StringBuilder elements = new StringBuilder();
  private final StringBuilder supports = new StringBuilder();
  private final StringBuilder equations = new StringBuilder();
  private final StringBuilder loads = new StringBuilder();

  BrickModel(ParametricSurface surface, int first, int second, double thickness) {
    this.first = first;
    this.second = second;
    double[] p = new double[3];
    double[] n = new double[3];
    for (int j = 0; j <= 2 * second; j++) {
      for (int i = 0; i <= 2 * first; i++) {
        surface.at(i / (2.0 * first), j / (2.0 * second), p, n);
        for (int k = 0; k < 3; k++) {
          if (exists(i, j, k)) {
            node(i, j, k, p, n, (k - 1) * thickness / 2);
          }
        }
      }
    }
    for (int j = 0; j < second; j++) {
      for (int i = 0; i < first; i++) {
        element(2 * i, 2 * j);
      }
    }
  }

  /** Corners have three nodes through the thickness, middles of edges the outer two. */
  private static boolean exists(int i, int j, int k) {
    boolean centre = i % 2 == 1 && j % 2 == 1;
    boolean middle = i % 2 == 1 || j % 2 == 1;
    return !centre && !(middle && k == 1);
  }

  int number(int i, int j, int k) {
    return 3 * (j * (2 * first + 1) + i) + k + 1;
  }

  int columns() {
    return 2 * first;
  }

  int rows() {
    return 2 * second;
  }

  private void node(int i, int j, int k, double[] p, double[] n, double z) {
    nodes.append(
        String.format(
            Locale.ROOT,
            "%d,%.12g,%.12g,%.12g%n",
            number(i, j, k),
            p[0] + z * n[0],
            p[1] + z * n[1],
            p[2] + z * n[2]));
  }

  private void element(int i, int j) {
    int[][] ring = {{0, 0}, {2, 0}, {2, 2}, {0, 2}};
    int[][] middles = {{1, 0}, {2, 1}, {1, 2}, {0, 1}};
    StringBuilder line = new StringBuilder().append(number(i, j, 0));
    add(line, ring, i, j, 0);
    add(line, ring, i, j, 2);
    add(line, middles, i, j, 0);
    add(line, middles, i, j, 2);
    add(line, ring, i, j, 1);
    String[] words = line.toString().split(",");
    elements.append(String.join(",", java.util.Arrays.copyOfRange(words, 0, 11))).append(",\n");
    elements.append(String.join(",", java.util.Arrays.copyOfRange(words, 11, 21))).append('\n');
  }

  private void add(StringBuilder line, int[][] places, int i, int j, int k) {
    for (int[] place : places) {
      line.append(',').append(number(i + place[0], j + place[1], k));
    }
  }

  /**
   * Fixes a direction (1, 2, 3) of all nodes through the thickness where column i (or row j) is
   * chosen.
   */
  void fix(IntPredicate columns, IntPredicate rows, int direction) {
    each(
        columns,
        rows,
        (i, j, k) -> supports.append(number(i, j, k)).append(',').append(direction).append(",,\n"));
  }

  /** Fixes a direction of the middle node of one corner point. */
  void fixPoint(int i, int j, int direction) {
    supports.append(number(i, j, 1)).append(',').append(direction).append(",,\n");
  }

  /** Holds the middle of the thickness alone, free to turn: a hinge. */
  void hinge(IntPredicate columns, IntPredicate rows) {
    each(
        columns,
        rows,
        (i, j, k) -> {
          for (int d = 1; d <= 3; d++) {
            if (k == 1) {
              supports.append(number(i, j, 1)).append(',').append(d).append(",,\n");
            } else if (k == 0 && !exists(i, j, 1)) {
              equations.append("*EQUATION\n2\n").append(number(i, j, 0)).append(',').append(d);
              equations
                  .append(",1.,")
                  .append(number(i, j, 2))
                  .append(',')
                  .append(d)
                  .append(",1.\n");
            }
          }
        });
  }

  private interface Visitor {
    void at(int i, int j, int k);
  }

  private void each(IntPredicate columns, IntPredicate rows, Visitor visitor) {
    for (int j = 0; j <= rows(); j++) {
      for (int i = 0; i <= columns(); i++) {
        for (int k = 0; k < 3; k++) {
          if (columns.test(i) && rows.test(j) && exists(i, j, k)) {
            visitor.at(i, j, k);
          }
        }
      }
    }
  }

  /** A dead force on the middle node of a corner point. */
  void force(int i, int j, int direction, double amount) {
    loads.append(number(i, j, 1)).append(',').append(direction).append(',').append(amount);
    loads.append('\n');
  }

  /** A dead force on the whole column i, spread evenly along it, over both faces. */
  void lineForce(int i, int direction, double total) {
    for (int j = 0; j <= rows(); j++) {
      double share = j % 2 == 1 ? 4 : j == 0 || j == rows() ? 1 : 2;
      double f = total * share / (6.0 * second) / 2;
      for (int k = 0; k < 3; k += 2) {
        loads.append(number(i, j, k)).append(',').append(direction).append(',').append(f);
        loads.append('\n');
      }
    }
  }

  /**
   * The input file.
   *
   * @param step words after *STATIC
   * @param moved a boundary card of the step, or empty
   */
  String input(double modulus, double poisson, String step, String moved, int watched) {
    return "*HEADING\ntiming\n*NODE, NSET=ALL\n"
        + nodes
        + "*ELEMENT, TYPE=C3D20R, ELSET=SHELL\n"
        + elements
        + "*NSET, NSET=WATCHED\n"
        + watched
        + "\n*MATERIAL, NAME=M\n*ELASTIC\n"
        + modulus
        + ","
        + poisson
        + "\n*SOLID SECTION, ELSET=SHELL, MATERIAL=M\n*BOUNDARY\n"
        + supports
        + equations
        + "*STEP, NLGEOM, INC=1000\n*STATIC\n"
        + step
        + "\n"
        + (loads.isEmpty() ? "" : "*CLOAD\n" + loads)
        + (moved.isEmpty() ? "" : "*BOUNDARY\n" + moved)
        + "*NODE PRINT, NSET=WATCHED, FREQUENCY=1000\nU\n*END STEP\n";
  }
}
