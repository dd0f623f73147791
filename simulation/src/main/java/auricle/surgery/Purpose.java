package auricle.surgery;

/** What a thread of the model stands for. */
public enum Purpose {
  /** A suture, with a knot and bites. */
  SUTURE,
  /** Skin that was shortened and pulls at both ends. */
  SKIN,
  /** A pad that holds from outside until it is taken off. */
  BOLSTER
}
