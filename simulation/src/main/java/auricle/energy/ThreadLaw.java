package auricle.energy;

/**
 * How the energy of a thread depends on its length L (mm): value W (mJ), tension W' (N) and
 * stiffness W'' (N/mm).
 */
public sealed interface ThreadLaw
    permits ThreadLaw.Elastic, ThreadLaw.ConstantPull, ThreadLaw.Impossible {
  /** W(L), mJ. */
  double energy(double length_mm);

  /** W'(L), N, never negative. */
  double tension(double length_mm);

  /** W''(L), N/mm. */
  double stiffness(double length_mm);

  /**
   * An elastic thread, W = ½ (EA/L₀) ⟨L − L₀⟩²; slack, it carries nothing.
   *
   * <p>So that W'' stays continuous, it rises linearly from 0 to EA/L₀ over |L − L₀| ≤ w (W is
   * cubic there). Outside that band the law is exact: no tension under L₀ − w, (EA/L₀)(L − L₀) over
   * L₀ + w. The band ends at a tension of {@value #BLEND_TENSION} N, and is never wider than a
   * thousandth of L₀; just at L₀ a quarter of the band's end tension acts.
   *
   * @param axialStiffness_N EA: force per unit strain
   * @param restLength_mm L₀, the length of thread in the loop when it pulls at nothing
   */
  record Elastic(double axialStiffness_N, double restLength_mm) implements ThreadLaw {
    /** Tension at the end of the blend, N: a thousandth of the order of a fold's tension. */
    public static final double BLEND_TENSION = 1e-3;

    private static final double WIDEST_BLEND = 1e-3;

    /**
     * @throws IllegalArgumentException if one of the two is not positive and finite
     */
    public Elastic {
      if (!(axialStiffness_N > 0 && restLength_mm > 0)
          || Double.isInfinite(axialStiffness_N)
          || Double.isInfinite(restLength_mm)) {
        throw new IllegalArgumentException(
            "axial stiffness %s N and rest length %s mm must be positive and finite"
                .formatted(axialStiffness_N, restLength_mm));
      }
    }

    private double springRate() {
      return axialStiffness_N / restLength_mm;
    }

    /** Half width w of the blend, mm. */
    double blend() {
      return Math.min(BLEND_TENSION / springRate(), WIDEST_BLEND * restLength_mm);
    }

    @Override
    public double energy(double length_mm) {
      double x = length_mm - restLength_mm;
      double w = blend();
      double blended = Math.max(x + w, 0);
      double shape = x > w ? x * x / 2 + w * w / 6 : blended * blended * blended / (12 * w);
      return springRate() * shape;
    }

    @Override
    public double tension(double length_mm) {
      double x = length_mm - restLength_mm;
      double w = blend();
      double blended = Math.max(x + w, 0);
      return springRate() * (x > w ? x : blended * blended / (4 * w));
    }

    @Override
    public double stiffness(double length_mm) {
      double x = length_mm - restLength_mm;
      double w = blend();
      return springRate() * Math.min(Math.max((x + w) / (2 * w), 0), 1);
    }
  }

  /**
   * A thread pulled at one tension T whatever its length, W = T L: the state while it is being
   * tied.
   *
   * @param tension_N T, not negative
   */
  record ConstantPull(double tension_N) implements ThreadLaw {
    /**
     * @throws IllegalArgumentException if the tension is negative or not finite
     */
    public ConstantPull {
      if (!(tension_N >= 0) || Double.isInfinite(tension_N)) {
        throw new IllegalArgumentException("tension " + tension_N + " N must not be negative");
      }
    }

    @Override
    public double energy(double length_mm) {
      return tension_N * length_mm;
    }

    @Override
    public double tension(double length_mm) {
      return tension_N;
    }

    @Override
    public double stiffness(double length_mm) {
      return 0;
    }
  }

  /**
   * A thread that cannot be: tightened, by a load factor out of range, to no length or less. It has
   * no energy, so that a solver turns back.
   */
  record Impossible() implements ThreadLaw {
    @Override
    public double energy(double length_mm) {
      return Double.NaN;
    }

    @Override
    public double tension(double length_mm) {
      return Double.NaN;
    }

    @Override
    public double stiffness(double length_mm) {
      return Double.NaN;
    }
  }
}
