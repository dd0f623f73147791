package auricle.energy;

/**
 * Law and distances of a contact between surfaces.
 *
 * @param law contact law
 * @param separation_mm ξ ≥ 0: distance of the mid-surfaces at which the gap is closed
 * @param restExclusion_mm pairs at most this close at rest are neighbours along the sheet and never
 *     touch, ≥ ξ; 0 where the surfaces are not joined: every pair may then touch
 * @param searchMargin_mm how far beyond the activation gap pairs are listed, &gt; 0
 */
public record ContactSettings(
    BarrierLaw law, double separation_mm, double restExclusion_mm, double searchMargin_mm) {
  /**
   * @throws IllegalArgumentException if a distance is out of its range
   */
  public ContactSettings {
    boolean apart = restExclusion_mm == 0;
    if (!(separation_mm >= 0
        && (apart || restExclusion_mm >= separation_mm)
        && searchMargin_mm > 0)) {
      throw new IllegalArgumentException(
          "separation %s, rest exclusion %s, search margin %s mm; expected 0 ≤ first ≤ second or second 0, 0 < third"
              .formatted(separation_mm, restExclusion_mm, searchMargin_mm));
    }
  }

  /**
   * Exclusion at π/2 times the distance at which contact begins. A sheet bent back on itself with
   * its faces in contact has a mid-surface of radius ξ/2 at the bend; points that meet across it
   * are πξ/2 apart along the sheet, so none that can meet is left out.
   *
   * <p>Search margin of two activation gaps, less where a flat sheet would list pairs of its own. A
   * wider one means fewer new sparse patterns and more idle pairs.
   */
  public static ContactSettings usual(BarrierLaw law, double separation_mm) {
    double reach = separation_mm + law.activation_mm();
    double neighbours = Math.PI / 2 * reach;
    double margin = Math.min(neighbours - reach, 2 * law.activation_mm());
    return new ContactSettings(law, separation_mm, neighbours, margin);
  }

  /** For surfaces that are not joined: no pair is left out for being near at rest. */
  public static ContactSettings apart(BarrierLaw law, double separation_mm) {
    return new ContactSettings(law, separation_mm, 0, 2 * law.activation_mm());
  }

  /** Distance of the mid-surfaces at which contact begins, mm. */
  double reach() {
    return separation_mm + law.activation_mm();
  }

  /**
   * Distance up to which a sparse pattern gets room for pairs when it is made anew, mm: as much
   * again beyond the listing distance, but nothing that was near at rest where that is excluded.
   */
  double reserve() {
    double twice = listing() + searchMargin_mm;
    return restExclusion_mm > 0 ? Math.max(listing(), Math.min(twice, restExclusion_mm)) : twice;
  }

  /** Distance up to which pairs are listed, mm. */
  double listing() {
    return reach() + searchMargin_mm;
  }
}
