package auricle.anatomy;

import java.util.Locale;

/** Parts of the auricle, as anatomy names them. */
public enum Region {
  /** Floor of the conchal bowl, bedded on the head. */
  FLOOR,
  /** Root of the helix, the ridge that divides cymba and cavum. */
  CRUS_HELICIS,
  /** Wall of the bowl above the crus helicis. */
  CYMBA_WALL,
  /** Wall of the bowl below it. */
  CAVUM_WALL,
  /** The fold between bowl and scapha, its body. */
  ANTIHELIX,
  /** Its upper branch, behind the triangular fossa. */
  SUPERIOR_CRUS,
  /** Its lower branch, between cymba and triangular fossa. */
  INFERIOR_CRUS,
  /** The hollow between the two branches. */
  TRIANGULAR_FOSSA,
  /** The trough between antihelix and helix. */
  SCAPHA,
  /** The rolled rim. */
  HELIX,
  /** The free tail of the helix above the lobule. */
  CAUDA_HELICIS,
  /** The cleft between cauda helicis and antitragus: skin without cartilage. */
  FISSURE(false),
  /** The prominence at the lower end of the antihelix. */
  ANTITRAGUS,
  /** The flap in front of the ear canal, with the notch below it. */
  TRAGUS,
  /** Skin and fat without cartilage. */
  LOBULE(false);

  private final boolean cartilage;

  Region() {
    this(true);
  }

  Region(boolean cartilage) {
    this.cartilage = cartilage;
  }

  /** The name in meshes, tables and files, lower case. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether there is cartilage in it. */
  public boolean hasCartilage() {
    return cartilage;
  }
}
