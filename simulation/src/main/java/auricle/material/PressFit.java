package auricle.material;

import auricle.diagnostics.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Tissue that meets a press at the bedside: all layers are scaled by one factor until the model's
 * rim goes as far under the same force.
 *
 * @param tissue scaled; as it was if the press cannot be met
 * @param scale factor on every layer, on top of what the tissue had
 * @param modelForce_n force that the model needs at that factor, N
 * @param evaluations how many times the model was asked
 * @param findings a warning if the press is outside what was published; an error if it cannot be
 *     met
 */
public record PressFit(
    Tissue tissue, double scale, double modelForce_n, int evaluations, List<Finding> findings) {
  /** Slot of the row whose range a press is held against, N/mm. */
  public static final String HELD_TO = "attachment.rim_stiffness_n_per_mm";

  /** Softest and stiffest factor that is tried. */
  static final double SOFTEST = 0.05;

  static final double STIFFEST = 20;

  /** The force is met to this share of it. */
  private static final double ACCURACY = 1e-3;

  private static final int MOST = 40;

  /** Keeps a copy of the findings. */
  public PressFit {
    findings = List.copyOf(findings);
  }

  /** Whether the press was met. */
  public boolean met() {
    return findings.stream().noneMatch(Finding::isError);
  }

  /**
   * Finds the factor by Brent's method in logarithms, in which force against stiffness is nearly a
   * straight line.
   *
   * @param tissue to be scaled
   * @param depth_mm how far the rim went, mm, above 0
   * @param force_n under what force, N, above 0
   * @param force the model's force at that depth for a tissue, N; NaN where it finds no equilibrium
   */
  public static PressFit of(
      Tissue tissue, double depth_mm, double force_n, ToDoubleFunction<Tissue> force) {
    Search search = new Search(tissue, force_n, force);
    List<Finding> findings = new ArrayList<>(outsidePublished(tissue, force_n / depth_mm));
    double end = search.bracketEnd();
    if (Double.isNaN(end)) {
      findings.add(search.unmet());
      return new PressFit(tissue, 1, search.forceAt(0), search.evaluations, findings);
    }
    double x = end == 0 ? 0 : search.between(end);
    double reached = search.forceAt(x);
    return new PressFit(
        tissue.scaled(Math.exp(x)), Math.exp(x), reached, search.evaluations, findings);
  }

  private static List<Finding> outsidePublished(Tissue tissue, double stiffness) {
    MaterialRow row = tissue.rimStiffness().row();
    Spread range = row.spread();
    if (stiffness >= range.low() && stiffness <= range.high()) {
      return List.of();
    }
    return List.of(
        Finding.warning(
            "/press_test",
            words("%.4f N/mm", stiffness),
            words(
                "%.3f to %.3f N/mm, as in volunteers (%s)",
                range.low(), range.high(), row.source()),
            "Measure again; the ear is taken as it was pressed."));
  }

  private static String words(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  /** The search for x = ln(factor) with ln(model's force / force) = 0. */
  private static final class Search {
    private final Tissue tissue;
    private final double force_n;
    private final ToDoubleFunction<Tissue> force;
    private int evaluations;

    Search(Tissue tissue, double force_n, ToDoubleFunction<Tissue> force) {
      this.tissue = tissue;
      this.force_n = force_n;
      this.force = force;
    }

    double forceAt(double x) {
      evaluations++;
      return force.applyAsDouble(tissue.scaled(Math.exp(x)));
    }

    private double excess(double x) {
      return Math.log(forceAt(x) / force_n);
    }

    /** Where the excess has the other sign than at 0; 0 if it is met there, NaN if nowhere. */
    double bracketEnd() {
      double atStart = excess(0);
      if (Math.abs(atStart) < ACCURACY) {
        return 0;
      }
      double limit = Math.log(atStart > 0 ? SOFTEST : STIFFEST);
      for (double share = 0.125; share <= 1; share *= 2) {
        double x = share * limit;
        if (excess(x) * atStart < 0) {
          return x;
        }
      }
      return Double.NaN;
    }

    double between(double end) {
      return new BracketingNthOrderBrentSolver(1e-12, 1e-12, ACCURACY, 5)
          .solve(MOST, this::excess, Math.min(0, end), Math.max(0, end));
    }

    Finding unmet() {
      return Finding.error(
          "/press_test",
          words("%.3f N at this depth is met by no stiffness", force_n),
          words(
              "a force that the model needs with %s to %s times its stiffness", SOFTEST, STIFFEST),
          "Measure again: depth in mm towards the head, force in N.");
    }
  }
}
