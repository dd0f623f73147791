package auricle.measurement;

import java.util.Arrays;
import java.util.List;

/**
 * All measurements of one ear in one state. How each is taken stands at its {@link Figure}.
 *
 * @param helixMastoidUpper_mm helix-to-mastoid distance at the upper level
 * @param helixMastoidMiddle_mm the same at the middle level
 * @param helixMastoidLower_mm the same at the lower level
 * @param lobuleMastoid_mm lobule-to-mastoid distance
 * @param foldAngleUpper_deg scapha-conchal angle on the posterior face at the upper level
 * @param foldAngleMiddle_deg the same at the middle level
 * @param auriculocephalicAngle_deg angle between the mastoid plane and the ear at mid-height
 * @param bowlDepth_mm depth of the conchal bowl
 * @param helicalShowUpper_mm helix beyond antihelix from the front at the upper level; negative:
 *     hidden
 * @param helicalShowMiddle_mm the same at the middle level
 * @param hiddenHelixLength_mm length of rim that the antihelix hides from the front
 * @param sulcus_mm depth of the sulcus behind the ear
 * @param showAlongHeight helical show from below upwards
 * @param rim evenness of the helical rim
 * @param fold evenness of the crest of the antihelical fold
 * @param height_mm height of the ear, from the lowest point of the lobule to the top of the helix
 * @param width_mm width of the ear, from the crest of tragus or root of the helix in front to the
 *     back of the helix, along the horizontal
 */
public record Measures(
    double helixMastoidUpper_mm,
    double helixMastoidMiddle_mm,
    double helixMastoidLower_mm,
    double lobuleMastoid_mm,
    double foldAngleUpper_deg,
    double foldAngleMiddle_deg,
    double auriculocephalicAngle_deg,
    double bowlDepth_mm,
    double helicalShowUpper_mm,
    double helicalShowMiddle_mm,
    double hiddenHelixLength_mm,
    double sulcus_mm,
    List<HelicalShow> showAlongHeight,
    Evenness rim,
    Evenness fold,
    double height_mm,
    double width_mm) {

  /** Keeps a copy of the list. */
  public Measures {
    showAlongHeight = List.copyOf(showAlongHeight);
  }

  /** Every single figure, in the order in which tables show them. */
  public List<NamedValue> figures() {
    return Arrays.stream(Figure.values()).map(figure -> figure.named(this)).toList();
  }
}
