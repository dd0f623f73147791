package auricle.crosssolver;

import auricle.mesh.ShellMesh;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Bites as nodes of their own that go with the mean of others: *NODE and *EQUATION. */
final class BiteNodes {
  /** Shares of the nodes of a body in what a place on one of its faces does. */
  interface Shares {
    void add(SpreadBite.Spot spot, boolean upper, double share, Map<Integer, Double> to);
  }

  private BiteNodes() {}

  static String node(int number, SpreadBite bite) {
    double[] p = bite.middle();
    return String.format(Locale.ROOT, "%d,%.12g,%.12g,%.12g%n", number, p[0], p[1], p[2]);
  }

  static String equations(int number, SpreadBite bite, ShellMesh mesh, Shares shares) {
    Map<Integer, Double> terms = new TreeMap<>();
    double each = 1.0 / bite.places().size();
    for (SpreadBite.Spot spot : bite.spots(mesh)) {
      switch (bite.face()) {
        case UNDER -> shares.add(spot, false, each, terms);
        case UPPER -> shares.add(spot, true, each, terms);
        case MIDDLE -> {
          shares.add(spot, false, each / 2, terms);
          shares.add(spot, true, each / 2, terms);
        }
      }
    }
    terms.values().removeIf(share -> Math.abs(share) < 1e-12);
    StringBuilder out = new StringBuilder();
    for (int direction = 1; direction <= 3; direction++) {
      out.append("*EQUATION\n").append(terms.size() + 1).append('\n');
      out.append(number).append(',').append(direction).append(",-1.");
      int k = 1;
      for (Map.Entry<Integer, Double> term : terms.entrySet()) {
        out.append(k++ % 4 == 0 ? ",\n" : ",");
        out.append(
            String.format(Locale.ROOT, "%d,%d,%.12g", term.getKey(), direction, term.getValue()));
      }
      out.append('\n');
    }
    return out.toString();
  }
}
