package auricle.material;

import java.util.List;

/**
 * How stiffness falls while a strain is held, as a Prony series: E(t) = E₀ [g∞ + Σ gᵢ exp(−t/τᵢ)],
 * g∞ = 1 − Σ gᵢ (generalised Maxwell solid). E₀ is the instant stiffness.
 *
 * @param terms the branches, fractions gᵢ with their times τᵢ
 */
public record Prony(List<Term> terms) {
  /** No relaxation. */
  public static final Prony NONE = new Prony(List.of());

  /**
   * One branch.
   *
   * @param fraction gᵢ, share of the instant stiffness, above 0
   * @param time_s τᵢ, s, above 0
   */
  public record Term(double fraction, double time_s) {
    /**
     * @throws IllegalArgumentException if one of the two is not positive and finite
     */
    public Term {
      if (!(fraction > 0 && fraction <= 1 && time_s > 0) || Double.isInfinite(time_s)) {
        throw new IllegalArgumentException(
            "fraction %s, time %s s; expected a fraction in (0, 1] and a positive time"
                .formatted(fraction, time_s));
      }
    }

    /** Mean of exp(−t/τ) over the first so many seconds: (1 − exp(−x))/x, x = t/τ; 1 at 0. */
    public double mean(double seconds) {
      double x = seconds / time_s;
      return x > 0 ? -Math.expm1(-x) / x : 1;
    }

    /** exp(−t/τ). */
    public double left(double seconds) {
      return Math.exp(-seconds / time_s);
    }
  }

  /**
   * @throws IllegalArgumentException if nothing is left in the long run: a fluid
   */
  public Prony {
    terms = List.copyOf(terms);
    double sum = terms.stream().mapToDouble(Term::fraction).sum();
    if (!(sum < 1)) {
      throw new IllegalArgumentException(
          "fractions come to " + sum + "; below 1 is needed, or nothing would be left");
    }
  }

  /** g∞, the share of the instant stiffness that stays. */
  public double remaining() {
    return 1 - terms.stream().mapToDouble(Term::fraction).sum();
  }

  /** E(t)/E₀ after a strain was held for so many seconds. */
  public double relaxed(double seconds) {
    return remaining() + terms.stream().mapToDouble(t -> t.fraction() * t.left(seconds)).sum();
  }
}
