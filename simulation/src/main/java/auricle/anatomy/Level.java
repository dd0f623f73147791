package auricle.anatomy;

import java.util.Locale;

/**
 * Heights at which an ear is measured, as a share of its height: 0 at the lowest point of the
 * lobule, 100 at the top of the helix, along z of the ear frame.
 *
 * <p>The upper level lies halfway between mid-height and top, the middle level at mid-height, where
 * da Silva Freitas 2008 (Aesthetic Plast Surg, doi 10.1007/s00266-008-9160-8) cut their moulds for
 * the scapha-conchal and the auriculocephalic angle. The lower level (the cauda helicis) and the
 * lobule's are this project's own convention.
 */
public enum Level {
  /** Three quarters up: triangular fossa and superior crus. */
  UPPER(75),
  /** Mid-height: conchal bowl, antihelix, scapha. */
  MIDDLE(50),
  /** Antitragus and cauda helicis. */
  LOWER(30),
  /** The free part of the lobule. */
  LOBULE(12);

  private final double heightPercent;

  Level(double heightPercent) {
    this.heightPercent = heightPercent;
  }

  /** Share of the ear's height, percent. */
  public double heightPercent() {
    return heightPercent;
  }

  /** The name in files, lower case. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
