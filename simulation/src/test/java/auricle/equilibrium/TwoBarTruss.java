package auricle.equilibrium;

import auricle.mesh.MovingFrame;
import java.util.List;

/**
 * A shallow two-bar truss pressed down at its apex, which knows its exact answer: with bars of rest
 * length L and present length l, P(w) = 2 EA (1/l − 1/L) (H − w). Half span 10 mm, height 2 mm, EA
 * 1000 N.
 */
final class TwoBarTruss {
  static final double SPAN = 10;
  static final double HEIGHT = 2;
  static final double EA = 1000;

  /** Index of the height of the apex. */
  static final int APEX = 4;

  static final double[] REST = {-SPAN, 0, 0, 0, HEIGHT, 0, SPAN, 0, 0};

  private TwoBarTruss() {}

  /** The force, N, that holds the apex w mm below its place at rest. */
  static double force(double w) {
    double rest = Math.hypot(SPAN, HEIGHT);
    return 2 * EA * (1 / Math.hypot(SPAN, HEIGHT - w) - 1 / rest) * (HEIGHT - w);
  }

  /** Depth of the apex at the first limit point: l³ = L a². */
  static double limitDepth() {
    double rest = Math.hypot(SPAN, HEIGHT);
    double now = Math.cbrt(rest * SPAN * SPAN);
    return HEIGHT - Math.sqrt(now * now - SPAN * SPAN);
  }

  /** The truss under a load of λ N. */
  static TotalEnergy loaded() {
    return new TotalEnergy(
        List.of(new Bars(EA, REST, 0, 1, 1, 2), new Pull(APEX, -1)),
        supports().build(),
        MovingFrame.NONE,
        REST,
        1);
  }

  /** The truss with its apex led down by λ mm. */
  static TotalEnergy led() {
    return new TotalEnergy(
        List.of(new Bars(EA, REST, 0, 1, 1, 2)),
        supports().prescribe(APEX, -1).build(),
        MovingFrame.NONE,
        REST,
        1);
  }

  private static Supports.Builder supports() {
    Supports.Builder supports = new Supports.Builder(9, 9).fix(5);
    for (int i : new int[] {0, 1, 2, 6, 7, 8}) {
      supports.fix(i);
    }
    return supports;
  }
}
