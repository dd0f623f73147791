package auricle.surgery;

import auricle.energy.ShellState;
import auricle.plan.Face;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts on the side that closes under folding act only until their mouths are shut. Watches scored
 * triangles: while open, M = D K / (1 + c); beyond the curvature K_s at which they shut, M = D (K −
 * K₀) with K₀ = K_s c / (1 + c), so that the moment is continuous.
 */
final class CutShut {
  /** Cuts open again at this share of the curvature at which they shut, lest they chatter. */
  private static final double REOPEN = 0.9;

  private final int sign;
  private final List<Watched> watched = new ArrayList<>();

  /**
   * @param face that is cut: posterior cuts close as the sheet becomes more convex to the front
   */
  CutShut(Face face) {
    sign = face == Face.POSTERIOR ? 1 : -1;
  }

  /** Starts to watch a scored triangle. */
  void watch(int triangle, PartialCut cut, double share, double kerf_mm) {
    double compliance = share * cut.compliance();
    double shutAt = cut.shutAt(kerf_mm);
    watched.add(new Watched(triangle, compliance, shutAt));
  }

  /** Shuts and opens cuts as the present shape wants; whether any has changed. */
  boolean revise(ShellBody body) {
    if (watched.isEmpty()) {
      return false;
    }
    ShellState state = body.state();
    boolean changed = false;
    for (Watched w : watched) {
      changed |= w.revise(state, body);
    }
    return changed;
  }

  private final class Watched {
    private final int triangle;
    private final double compliance;
    private final double shutAt;
    private final double offset;
    private boolean closed;

    Watched(int triangle, double compliance, double shutAt) {
      this.triangle = triangle;
      this.compliance = compliance;
      this.shutAt = shutAt;
      this.offset = shutAt * compliance / (1 + compliance);
    }

    boolean revise(ShellState state, ShellBody body) {
      double closing = sign * state.curvature(triangle, 1) + (closed ? offset : 0);
      boolean nowClosed = closing > (closed ? REOPEN : 1) * shutAt;
      if (nowClosed == closed) {
        return false;
      }
      closed = nowClosed;
      int way = closed ? 1 : -1;
      body.sections().soften(triangle, -way * compliance);
      body.bend(triangle, sign * way * offset);
      body.changed();
      return true;
    }
  }
}
