package auricle.anatomy;

/** A piece of a profile over its own arc length. */
interface ProfilePiece {
  /** Arc length, mm; may be 0. */
  double length();

  /** The point at an arc length from the start of the piece. */
  ProfilePoint at(double length);

  /** Its last point. */
  default ProfilePoint end() {
    return at(length());
  }
}
