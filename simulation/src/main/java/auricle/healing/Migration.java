package auricle.healing;

/**
 * How thread and tissue give: bites that migrate and a knot that seats.
 *
 * <p>A bite slips through the tissue at a speed that grows with the tension T and falls as healing
 * proceeds, ṡ = μ T (1 − α(t)); it lengthens the loop. A knot lets its loop out by σ (1 −
 * exp(−t/τ)). No one has measured either: μ is calibrated to outcome.
 *
 * @param speed_mm_per_day_n μ of the whole loop, mm a day a newton, ≥ 0
 * @param knotSlack_mm σ, ≥ 0
 * @param knotSeating_days τ, above 0
 */
public record Migration(double speed_mm_per_day_n, double knotSlack_mm, double knotSeating_days) {
  /** Nothing gives. */
  public static final Migration NONE = new Migration(0, 0, 1);

  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public Migration {
    if (!(speed_mm_per_day_n >= 0 && knotSlack_mm >= 0 && knotSeating_days > 0)) {
      throw new IllegalArgumentException(
          "migration %s mm/(d N), slack %s mm over %s days"
              .formatted(speed_mm_per_day_n, knotSlack_mm, knotSeating_days));
    }
  }

  /** Length that the knot has let out at a time, s; mm. */
  double slack_mm(double time_s) {
    return -knotSlack_mm * Math.expm1(-time_s / (knotSeating_days * Durations.DAY_S));
  }

  /** Over a step: slip by the tension at its start and at its end, mm a newton. */
  StepWeights slip(ScarGrowth growth, double from_s, double to_s) {
    return StepWeights.of(
        t -> speed_mm_per_day_n / Durations.DAY_S * (1 - growth.share(t)),
        from_s,
        to_s,
        growth.scale_s());
  }
}
