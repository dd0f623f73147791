package auricle.anatomy;

/**
 * An ear as a practitioner measures it with calliper and protractor.
 *
 * @param side which ear
 * @param age_years age, years
 * @param height_mm from the lowest point of the lobule to the top of the helix, mm
 * @param width_mm from the front of the tragus or root of the helix to the back of the helix, mm
 * @param helixMastoidUpper_mm mastoid plane to the most lateral line of the helix, upper level, mm
 * @param helixMastoidMiddle_mm the same at the middle level, mm
 * @param helixMastoidLower_mm the same at the lower level, mm
 * @param lobuleMastoid_mm the same at the level of the lobule, mm
 * @param auriculocephalicAngle_deg between ear and mastoid plane at the middle level, deg
 * @param foldAngleUpper_deg scapha-conchal angle on the posterior face, upper level, deg
 * @param foldAngleMiddle_deg the same at the middle level, deg
 * @param bowlDepth_mm from the rim of the bowl to its floor, mm
 * @param cartilageThickness_mm conchal cartilage, mm
 */
public record EarMeasurements(
    Side side,
    double age_years,
    double height_mm,
    double width_mm,
    double helixMastoidUpper_mm,
    double helixMastoidMiddle_mm,
    double helixMastoidLower_mm,
    double lobuleMastoid_mm,
    double auriculocephalicAngle_deg,
    double foldAngleUpper_deg,
    double foldAngleMiddle_deg,
    double bowlDepth_mm,
    double cartilageThickness_mm) {

  /**
   * A normal adult ear, right side.
   *
   * <p>Height 63.1 and width 33.3: men of 18 to 25 (Bozkır 2006, Aesthetic Plast Surg 30:81-85);
   * projection 17.0 in the same study, taken for the middle level. Upper level less and lower level
   * more than the middle one by the pattern of the aims of McDowell 1968 (Plast Reconstr Surg
   * 41:17-27, recalled): 14 and 18; lobule 15: our own choice. Angles 31.1 and 106.7: da Silva
   * Freitas 2008 (doi 10.1007/s00266-008-9160-8; the fold angle was measured at the upper level and
   * stands for both). Bowl depth 10.7: Brockhoff et al., "Anatomic analysis of the conchal bowl
   * cartilage", and conchal cartilage 1.25 of the same study, men.
   */
  public static EarMeasurements normalAdult() {
    return new EarMeasurements(
        Side.RIGHT, 25, 63.1, 33.3, 14, 17, 18, 15, 31.1, 106.7, 106.7, 10.7, 1.25);
  }

  /**
   * A normal ear at eleven years, right side: height 56.95 (n = 305, 9 to 13 years, PMC4556782),
   * width in the adult's proportion (Bozkır 2006), projections as in the adult, since they are full
   * at about 6 years and bowl depth at about 5 (Kalcioglu 2003, Int J Pediatr Otorhinolaryngol
   * 67:1169-77); cartilage 0.86 of the adult's (tragal cartilage under 15 and over 30 years, Khan
   * and Parab 2015, J Laryngol Otol).
   */
  public static EarMeasurements normalChild() {
    return new EarMeasurements(
        Side.RIGHT, 11, 56.95, 30.0, 14, 17, 18, 15, 31.1, 106.7, 106.7, 10.7, 1.07);
  }

  /** The same with another side. */
  public EarMeasurements withSide(Side value) {
    return of(value, values());
  }

  /** The same with another age, years. */
  public EarMeasurements withAge_years(double value) {
    return with(0, value);
  }

  /** The same with another height, mm. */
  public EarMeasurements withHeight_mm(double value) {
    return with(1, value);
  }

  /** The same with another width, mm. */
  public EarMeasurements withWidth_mm(double value) {
    return with(2, value);
  }

  /** The same with another helix-to-mastoid distance, upper level, mm. */
  public EarMeasurements withHelixMastoidUpper_mm(double value) {
    return with(3, value);
  }

  /** The same with another helix-to-mastoid distance, middle level, mm. */
  public EarMeasurements withHelixMastoidMiddle_mm(double value) {
    return with(4, value);
  }

  /** The same with another helix-to-mastoid distance, lower level, mm. */
  public EarMeasurements withHelixMastoidLower_mm(double value) {
    return with(5, value);
  }

  /** The same with another lobule-to-mastoid distance, mm. */
  public EarMeasurements withLobuleMastoid_mm(double value) {
    return with(6, value);
  }

  /** The same with another auriculocephalic angle, deg. */
  public EarMeasurements withAuriculocephalicAngle_deg(double value) {
    return with(7, value);
  }

  /** The same with another scapha-conchal angle, upper level, deg. */
  public EarMeasurements withFoldAngleUpper_deg(double value) {
    return with(8, value);
  }

  /** The same with another scapha-conchal angle, middle level, deg. */
  public EarMeasurements withFoldAngleMiddle_deg(double value) {
    return with(9, value);
  }

  /** The same with another depth of the bowl, mm. */
  public EarMeasurements withBowlDepth_mm(double value) {
    return with(10, value);
  }

  /** The same with another thickness of the conchal cartilage, mm. */
  public EarMeasurements withCartilageThickness_mm(double value) {
    return with(11, value);
  }

  /** The numbers in the order of the components. */
  private double[] values() {
    return new double[] {
      age_years,
      height_mm,
      width_mm,
      helixMastoidUpper_mm,
      helixMastoidMiddle_mm,
      helixMastoidLower_mm,
      lobuleMastoid_mm,
      auriculocephalicAngle_deg,
      foldAngleUpper_deg,
      foldAngleMiddle_deg,
      bowlDepth_mm,
      cartilageThickness_mm
    };
  }

  private EarMeasurements with(int place, double value) {
    double[] changed = values();
    changed[place] = value;
    return of(side, changed);
  }

  private static EarMeasurements of(Side side, double[] v) {
    return new EarMeasurements(
        side, v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7], v[8], v[9], v[10], v[11]);
  }
}
