package auricle.energy;

import auricle.material.SectionField;
import auricle.mesh.RestShape;

/**
 * One of several elastic layers of a sheet, with a shape of its own in which it is free of stress:
 * ½ s ∫ (x − r) C (x − r) with shape x of the sheet, rest shape r, stiffness C and share s.
 *
 * <p>Its owner changes rest shape and share between solutions; they take effect when the terms of
 * the sheet are given the load factor.
 */
public final class ShellLayer {
  private final RestShape rest;
  private final SectionField sections;
  private double share = 1;

  /**
   * @param rest rest shape r on all triangles of the sheet; kept, its owner may change it
   * @param sections stiffness C of the triangles that the layer covers, without stops
   */
  public ShellLayer(RestShape rest, SectionField sections) {
    this.rest = rest;
    this.sections = sections;
  }

  /** r. */
  public RestShape rest() {
    return rest;
  }

  /** C. */
  public SectionField sections() {
    return sections;
  }

  /** s. */
  public double share() {
    return share;
  }

  /**
   * Sets how much of it is there.
   *
   * @throws IllegalArgumentException if it is negative or not finite
   */
  public void share(double now) {
    if (!(now >= 0 && now < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("share " + now + " of a layer must not be negative");
    }
    share = now;
  }
}
