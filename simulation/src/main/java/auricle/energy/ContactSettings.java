package auricle.energy;

/**
 * Law and distances of a contact between surfaces.
 *
 * @param law contact law
 * @param separation_mm ξ ≥ 0: distance of the mid-surfaces at which the gap is closed
 * @param restExclusion_mm pairs at most this close at rest are neighbours along the sheet and never
 *     touch, ≥ ξ
 * @param searchMargin_mm how far beyond the activation gap pairs are listed, &gt; 0
 */
public record ContactSettings(
    BarrierLaw law, double separation_mm, double restExclusion_mm, double searchMargin_mm) {
  /**
   * @throws IllegalArgumentException if a distance is out of its range
   */
  public ContactSettings {
    if (!(separation_mm >= 0 && restExclusion_mm >= separation_mm && searchMargin_mm > 0)) {
      throw new IllegalArgumentException(
          "separation %s, rest exclusion %s, search margin %s mm; expected 0 ≤ first ≤ second, 0 < third"
              .formatted(separation_mm, restExclusion_mm, searchMargin_mm));
    }
  }

  /** Exclusion at the distance of activation, search margin of five activation gaps. */
  public static ContactSettings usual(BarrierLaw law, double separation_mm) {
    double activation = law.activation_mm();
    return new ContactSettings(law, separation_mm, separation_mm + activation, 5 * activation);
  }

  /** Distance of the mid-surfaces at which contact begins, mm. */
  double reach() {
    return separation_mm + law.activation_mm();
  }

  /** Distance up to which pairs are listed, mm. */
  double listing() {
    return reach() + searchMargin_mm;
  }
}
