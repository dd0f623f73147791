package auricle.assessment;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What there may be to beware of in a result; the key is the name in lower case. */
public enum CautionKind {
  /** The antihelix hides the helix from the front. */
  HIDDEN_HELIX,
  /** The middle third is set back further than upper and lower. */
  MIDDLE_OVERCORRECTED,
  /** Upper and lower are set back further than the middle. */
  POLES_OVERCORRECTED,
  /** The fold has a sharp edge. */
  SHARP_FOLD,
  /** The fold or the rim has a kink. */
  BROKEN_LINE,
  /** Somewhere the ear is folded more sharply than the mesh can follow. */
  FOLDED_BEYOND_MESH,
  /** The edges of a full-thickness cut show from the front. */
  FULL_THICKNESS_CUT,
  /** A thread is near its knot-pull strength. */
  TENSION_NEAR_KNOT_PULL,
  /** A thread is near to tearing out of the tissue. */
  TENSION_NEAR_TEAR_THROUGH,
  /** A thread carries nothing in the end. */
  SLACK_THREAD,
  /** The lobule stands out of the line of the rim. */
  LOBULE_LEFT_BEHIND,
  /** Skin alone is relied on. */
  SKIN_ALONE,
  /** A concha-mastoid suture alone is relied on, with a deep bowl. */
  CONCHA_MASTOID_ALONE,
  /** Scoring alone is relied on. */
  SCORING_ALONE,
  /** The sulcus is effaced. */
  EFFACED_SULCUS,
  /** The two ears differ. */
  SIDES_DIFFER,
  /** Cartilage is strained near to where it tears. */
  STRAIN_NEAR_TEARING,
  /** A press at the bedside was softer or firmer than any that was published. */
  UNUSUAL_PRESS;

  /** The name in files. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The kind of a key, if there is one. */
  public static Optional<CautionKind> ofKey(String key) {
    return Arrays.stream(values()).filter(kind -> kind.key().equals(key)).findFirst();
  }
}
