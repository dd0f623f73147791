package auricle.plan;

/** How a thread is tied: to a length, or to a pull. */
public sealed interface Tie {

  /** The number that is chosen, as a dose. */
  Dose dose();

  /** A tie of the same kind by another number. */
  Tie with(double value);

  /** The same kind of tie by the doses of its operation. */
  default Tie from(DoseValues doses) {
    return with(doses.get(dose().key()));
  }

  /**
   * Tied until the thread spans a given gap: for a fold suture the length of the tied loop between
   * its two bite lines; for a single thread the distance between its two ends.
   *
   * @param gap_mm span when tied, mm
   */
  record Gap(double gap_mm) implements Tie {
    private static final DoseRange RANGE =
        new DoseRange(
            "gap_mm", "gap of the tie", "mm", 0.5, 60, 0.25, "a thread spans no more on an ear");

    @Override
    public Dose dose() {
      return RANGE.at(gap_mm);
    }

    @Override
    public Gap with(double value) {
      return new Gap(value);
    }
  }

  /**
   * Tied at a given tension; afterwards the thread keeps the length that it had then.
   *
   * @param tension_n all round the thread when tied, N
   */
  record Tension(double tension_n) implements Tie {
    private static final DoseRange RANGE =
        new DoseRange(
            "tension_n",
            "tension of the tie",
            "N",
            0.01,
            20,
            0.05,
            "threads for ears give way at the knot below 20 N (least knot-pull of 2-0: 14.1 N)");

    @Override
    public Dose dose() {
      return RANGE.at(tension_n);
    }

    @Override
    public Tension with(double value) {
      return new Tension(value);
    }
  }
}
