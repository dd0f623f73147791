package auricle.viewer.viewmodel;

/** What the colours of the ear say. */
public enum Paint {
  /** Nothing: it looks like skin. */
  SKIN("Skin", "", ""),
  /** Anatomical regions. */
  REGIONS("Regions", "", ""),
  /** Greatest strain on either face of the cartilage. */
  STRAIN("Strain", "strain", "%"),
  /** What of the strain has relaxed or been grown into, and pulls no more. */
  SETTLED("Settled strain", "settled_strain", "%"),
  /** Greatest stress on either face of the cartilage. */
  STRESS("Stress", "stress", "MPa"),
  /** Distance from the ear before. */
  DISPLACEMENT("Displacement", "displacement", "mm"),
  /** Distance from the step before, or after the operation from its end. */
  STEP_CHANGE("Change in this step", "change_in_step", "mm");

  private final String label;
  private final String field;
  private final String unit;

  Paint(String label, String field, String unit) {
    this.label = label;
    this.field = field;
    this.unit = unit;
  }

  /** As shown. */
  public String label() {
    return label;
  }

  /**
   * What the numbers are, for the legend.
   *
   * @param healed whether at a time after the operation
   */
  public String words(boolean healed) {
    return switch (this) {
      case STEP_CHANGE -> healed ? "Change since tied" : label;
      case SETTLED -> "Settled strain (pulls no more)";
      default -> label;
    };
  }

  /** Name of the field in a surface; empty if it is none. */
  public String field() {
    return field;
  }

  /** Unit in which the legend gives it. */
  public String unit() {
    return unit;
  }

  /** What the field's numbers are multiplied by for the legend. */
  public double scale() {
    return unit.equals("%") ? 100 : 1;
  }

  /** Whether it is a field with a legend of numbers. */
  public boolean isField() {
    return !field.isEmpty();
  }

  @Override
  public String toString() {
    return label;
  }
}
