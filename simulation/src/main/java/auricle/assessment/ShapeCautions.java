package auricle.assessment;

import auricle.anatomy.Level;
import auricle.measurement.Measures;
import java.util.List;
import java.util.Locale;

/** What to beware of in the shape that a plan leads to. */
final class ShapeCautions {
  private final Limits limits;
  private final Measures before;
  private final Measures after;
  private final List<Caution> cautions;

  ShapeCautions(Limits limits, Measures before, Measures after, List<Caution> cautions) {
    this.limits = limits;
    this.before = before;
    this.after = after;
    this.cautions = cautions;
  }

  /** Adds all that apply. */
  void add() {
    hiddenHelix();
    double middle = middleBeforePoles(after);
    above(
        CautionKind.MIDDLE_OVERCORRECTED,
        "middle_behind_poles",
        -middle,
        Level.MIDDLE.key(),
        "The middle third lies %.1f mm behind the line of upper and lower third");
    above(
        CautionKind.POLES_OVERCORRECTED,
        "middle_before_poles",
        middle,
        Level.MIDDLE.key(),
        "The middle third stands %.1f mm out before the line of upper and lower third");
    foldEdge();
    above(
        CautionKind.LOBULE_LEFT_BEHIND,
        "lobule_beyond_rim",
        after.lobuleMastoid_mm() - after.helixMastoidLower_mm(),
        Level.LOBULE.key(),
        "The lobule stands %.1f mm out beyond the lower helix");
    sulcus();
  }

  private static double middleBeforePoles(Measures m) {
    return m.helixMastoidMiddle_mm() - (m.helixMastoidUpper_mm() + m.helixMastoidLower_mm()) / 2;
  }

  private void hiddenHelix() {
    above(
        CautionKind.HIDDEN_HELIX,
        "hidden_helix",
        after.hiddenHelixLength_mm(),
        after.helicalShowUpper_mm() < after.helicalShowMiddle_mm()
            ? Level.UPPER.key()
            : Level.MIDDLE.key(),
        "From the front the antihelix hides %.1f mm of the helix");
  }

  private void foldEdge() {
    Limit sharp = limits.of("sharp_fold");
    double radius = after.fold().smallestRadius_mm();
    if (radius < sharp.value()) {
      String words =
          words("The fold has a sharp edge: radius %.1f mm, less than %.1f", radius, sharp.value());
      String where = words("height %.0f %%", after.fold().level_percent());
      cautions.add(new Caution(CautionKind.SHARP_FOLD, words, radius, sharp, where));
    }
    brokenLine();
  }

  private void brokenLine() {
    Limit none = limits.of("new_kinks");
    double more = kinks(after) - kinks(before);
    if (more > none.value()) {
      String words =
          words(
              "The line of fold or rim is broken; kinks that were not there before: %.0f, more than %.0f",
              more, none.value());
      String where = words("height %.0f %%", after.rim().level_percent());
      cautions.add(new Caution(CautionKind.BROKEN_LINE, words, more, none, where));
    }
  }

  private static double kinks(Measures m) {
    return m.fold().kinks() + m.rim().kinks();
  }

  private void sulcus() {
    Limit limit = limits.of("effaced_sulcus");
    double left = after.sulcus_mm() / before.sulcus_mm();
    if (left < limit.value()) {
      String words =
          words(
              "The sulcus is effaced: %.1f mm deep, %.0f %% of what it was",
              after.sulcus_mm(), 100 * left);
      cautions.add(new Caution(CautionKind.EFFACED_SULCUS, words, left, limit, Level.MIDDLE.key()));
    }
  }

  private void above(CautionKind kind, String key, double measured, String where, String words) {
    Limit limit = limits.of(key);
    if (measured > limit.value()) {
      String all = words(words + ", more than %.1f", measured, limit.value());
      cautions.add(new Caution(kind, all, measured, limit, where));
    }
  }

  private static String words(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
