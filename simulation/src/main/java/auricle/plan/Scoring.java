package auricle.plan;

import auricle.diagnostics.Finding;
import java.util.List;

/**
 * Partial-thickness cuts along the fold line, side by side over a band: the cartilage bends more
 * easily across them and turns away from the face that was cut.
 *
 * @param name of the step
 * @param enabled whether it is done
 * @param face that is cut
 * @param depth_fraction depth of a cut over the local thickness of the cartilage
 * @param spacing_mm distance from cut to cut, mm
 * @param fromLevel_percent lower end of the band, % of the height of the ear
 * @param toLevel_percent upper end of the band, % of the height of the ear
 * @param fromFold_mm middle of the band, mm from the fold line, + towards the rim
 * @param width_mm of the band across the fold, mm
 * @param kerf_mm width of a cut at the surface, mm: cuts on the face that closes under folding
 *     yield until it is shut
 */
public record Scoring(
    String name,
    boolean enabled,
    Face face,
    double depth_fraction,
    double spacing_mm,
    double fromLevel_percent,
    double toLevel_percent,
    double fromFold_mm,
    double width_mm,
    double kerf_mm)
    implements Operation {

  /** Kind, as files name it. */
  public static final String KIND = "scoring";

  private static final DoseRange DEPTH =
      new DoseRange(
          "depth_fraction",
          "depth of the cuts",
          "of the thickness",
          0.05,
          0.7,
          0.05,
          "the formula for an edge crack in bending holds up to 0.7; deeper is a full-thickness cut");
  private static final DoseRange SPACING =
      new DoseRange(
          "spacing_mm", "distance from cut to cut", "mm", 0.5, 10, 0.25, "a band has several cuts");
  private static final DoseRange FROM =
      DoseRange.level("from_level_percent", "lower end of the band");
  private static final DoseRange TO = DoseRange.level("to_level_percent", "upper end of the band");
  private static final DoseRange OFFSET =
      DoseRange.fromFold("from_fold_mm", "middle of the band from the fold");
  private static final DoseRange WIDTH =
      new DoseRange("width_mm", "width of the band", "mm", 1, 25, 0.5, "the ear is not wider");
  private static final DoseRange KERF =
      new DoseRange("kerf_mm", "width of a cut", "mm", 0, 1, 0.05, "a blade takes no more");

  /**
   * Cuts over the antihelix that soften it about as much as scoring until flat does, to half (4.6
   * to 2.4 MPa: Gruber 2005, Plast Reconstr Surg, "Changing the convexity", part I; depth and
   * spacing are not in the abstract): 0.4 of the thickness every 2 mm leave 0.41 to 0.46 of the
   * stiffness of a sheet of 1.3 to 1.5 mm. Band and kerf are our own choice.
   */
  public static Scoring usual(String name) {
    return new Scoring(name, true, Face.POSTERIOR, 0.4, 2, 45, 85, 0, 8, 0.1);
  }

  /** The same on another face. */
  public Scoring withFace(Face other) {
    return new Scoring(
        name,
        enabled,
        other,
        depth_fraction,
        spacing_mm,
        fromLevel_percent,
        toLevel_percent,
        fromFold_mm,
        width_mm,
        kerf_mm);
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public String words() {
    return face == Face.POSTERIOR ? "posterior scoring" : "anterior scoring";
  }

  @Override
  public List<Dose> doses() {
    return List.of(
        DEPTH.at(depth_fraction),
        SPACING.at(spacing_mm),
        FROM.at(fromLevel_percent),
        TO.at(toLevel_percent),
        OFFSET.at(fromFold_mm),
        WIDTH.at(width_mm),
        KERF.at(kerf_mm));
  }

  @Override
  public Scoring with(String newName, boolean isEnabled, DoseValues d) {
    return new Scoring(
        newName,
        isEnabled,
        face,
        d.get(DEPTH),
        d.get(SPACING),
        d.get(FROM),
        d.get(TO),
        d.get(OFFSET),
        d.get(WIDTH),
        d.get(KERF));
  }

  @Override
  public List<Finding> findings(String at) {
    return OperationCheck.band(this, fromLevel_percent, toLevel_percent, at);
  }
}
