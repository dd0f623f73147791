package auricle.surgery;

import auricle.material.BendingStop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Cuts of one triangle on the side that closes under folding, which act only until their mouths are
 * shut. With μ = M₂/D₂₂ and κ = K₂ + (D₁₂/D₂₂) K₁, cuts of compliance c that shut at a turn of θ
 * make
 *
 * <pre> κ = μ + min(c μ, θ), </pre>
 *
 * summed over all cuts. The section has the compliance of all cuts open; what shut cuts take back
 * is a {@link BendingStop} each. The law is one of an energy: where the sheet comes to rest does
 * not depend on how it got there.
 */
final class CutShut {
  private final List<Cut> cuts = new ArrayList<>();

  /**
   * @param side 1 where bending that makes the sheet more convex to the front closes it, else −1
   * @param compliance c, as a share of that of the uncut sheet
   * @param turn_per_mm θ, smeared, 1/mm
   */
  record Cut(int side, double compliance, double turn_per_mm) {
    double shutAt() {
      return turn_per_mm / compliance;
    }
  }

  CutShut() {}

  CutShut(CutShut other) {
    cuts.addAll(other.cuts);
  }

  /** Adds cuts that are in the compliance of the section already. */
  void add(Cut cut) {
    cuts.add(cut);
  }

  private List<Cut> towards(int side) {
    return cuts.stream()
        .filter(cut -> cut.side() == side)
        .sorted(Comparator.comparingDouble(Cut::shutAt))
        .toList();
  }

  /**
   * Stops of all cuts.
   *
   * @param compliance of the section, these cuts and others
   * @param stiffness_n_mm D₂₂ of the uncut sheet
   */
  List<BendingStop> stops(double compliance, double stiffness_n_mm) {
    List<BendingStop> stops = new ArrayList<>();
    for (int side = -1; side <= 1; side += 2) {
      double open = 1 + compliance;
      double turned = 0;
      for (Cut cut : towards(side)) {
        double at = cut.shutAt() * open + turned;
        double closed = open - cut.compliance();
        stops.add(new BendingStop(side, at, stiffness_n_mm * (1 / closed - 1 / open)));
        open = closed;
        turned += cut.turn_per_mm();
      }
    }
    return stops;
  }

  /**
   * A sheet that keeps its cuts as they stand: linear, μ = (κ − θ)/(1 + c).
   *
   * @param compliance c
   * @param turn_per_mm θ, 1/mm
   */
  record Standing(double compliance, double turn_per_mm) {}

  /**
   * All cuts as they stand at a curvature: moment and stiffness there are those of the law.
   *
   * @param compliance of the section, these cuts and others
   * @param curvature_per_mm κ, 1/mm
   */
  Standing at(double compliance, double curvature_per_mm) {
    double slope = 1 / (1 + compliance);
    double moment = slope * curvature_per_mm;
    for (BendingStop stop : stops(compliance, 1)) {
      slope += stop.stiffness(curvature_per_mm);
      moment += stop.moment(curvature_per_mm);
    }
    return new Standing(1 / slope - 1, curvature_per_mm - moment / slope);
  }
}
