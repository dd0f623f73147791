package auricle.mesh;

/** The profile that a surface of revolution is made of. */
interface Meridian {
  /** Fills radius, height, and the radial and axial component of the unit normal at t in 0 … 1. */
  void at(double t, double[] out);

  static void set(double[] out, double radius, double height, double radial, double axial) {
    out[0] = radius;
    out[1] = height;
    out[2] = radial;
    out[3] = axial;
  }
}
