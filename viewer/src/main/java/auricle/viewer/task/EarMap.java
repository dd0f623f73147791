package auricle.viewer.task;

/** Where places of a plan lie on the triangles of an ear, in its rest shape. */
public interface EarMap {
  /**
   * A point of a triangle.
   *
   * @param triangle its index
   * @param w1 weight of its second corner
   * @param w2 weight of its third corner
   */
  record OnTriangle(int triangle, double w1, double w2) {}

  /**
   * Beside the fold line.
   *
   * @param level_percent level on the fold line, % of ear height
   * @param fromFold_mm along the profile, + towards the rim
   */
  OnTriangle besideFold(double level_percent, double fromFold_mm);

  /**
   * On the wall of the bowl.
   *
   * @param level_percent level on the fold line, % of ear height
   * @param wall_percent 0 the edge of the floor, 100 the fold line
   */
  OnTriangle onWall(double level_percent, double wall_percent);

  /**
   * On the tail of the helix.
   *
   * @param fromTip_mm distance from its end, mm
   */
  OnTriangle onCauda(double fromTip_mm);

  /**
   * At the rim.
   *
   * @param level_percent height, % of ear height
   */
  OnTriangle onRim(double level_percent);
}
