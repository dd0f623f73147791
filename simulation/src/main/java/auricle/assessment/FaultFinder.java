package auricle.assessment;

import auricle.anatomy.Level;
import auricle.measurement.Figure;
import auricle.measurement.Measures;
import java.util.ArrayList;
import java.util.List;

/** Which thirds of an ear are at fault, by which measurement. */
final class FaultFinder {
  /**
   * What no calliper or protractor tells, mm or deg: an ear is shaped after its measurements to
   * less than that, and one that was measured at a limit is not beyond it.
   */
  private static final double READING = 0.1;

  private final Limits limits;
  private final Measures measures;
  private final List<Fault> faults = new ArrayList<>();

  FaultFinder(Limits limits, Measures measures) {
    this.limits = limits;
    this.measures = measures;
  }

  /** The faults, from the upper third downwards. */
  List<Fault> faults() {
    String open = "the scapha-conchal fold is open";
    String far = "the helix stands far from the head";
    check(Level.UPPER, open, Figure.FOLD_ANGLE_UPPER, "fold_angle_open");
    check(Level.UPPER, far, Figure.HELIX_MASTOID_UPPER, "protruding");
    check(Level.MIDDLE, open, Figure.FOLD_ANGLE_MIDDLE, "fold_angle_open");
    check(Level.MIDDLE, "the conchal bowl is deep", Figure.BOWL_DEPTH, "deep_bowl");
    check(Level.MIDDLE, far, Figure.HELIX_MASTOID_MIDDLE, "protruding");
    check(
        Level.MIDDLE,
        "the ear stands at a wide angle to the head",
        Figure.AURICULOCEPHALIC_ANGLE,
        "auriculocephalic_wide");
    check(Level.LOWER, far, Figure.HELIX_MASTOID_LOWER, "protruding_lower");
    lobule();
    return faults;
  }

  private void check(Level level, String words, Figure figure, String key) {
    Limit limit = limits.of(key);
    if (figure.of(measures) >= limit.value() + READING) {
      faults.add(new Fault(level, words, figure, figure.of(measures), limit));
    }
  }

  /** The lobule is held against the rim above it: how far it stands out beyond. */
  private void lobule() {
    Limit limit = limits.of("lobule_beyond_rim");
    double beyond = measures.lobuleMastoid_mm() - measures.helixMastoidLower_mm();
    if (beyond >= limit.value() + READING) {
      String words = "the lobule stands out beyond the line of the rim";
      faults.add(new Fault(Level.LOBULE, words, Figure.LOBULE_MASTOID, beyond, limit));
    }
  }
}
