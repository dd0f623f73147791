package auricle.viewer.scene;

/** Arithmetic on coordinates that stand three by three in arrays. */
final class Vectors {
  private Vectors() {}

  /** Makes the vector at a place one long; a zero vector stays. */
  static void normalise(float[] v, int place) {
    int i = 3 * place;
    double length = Math.sqrt(v[i] * v[i] + v[i + 1] * v[i + 1] + v[i + 2] * v[i + 2]);
    if (length > 0) {
      v[i] /= (float) length;
      v[i + 1] /= (float) length;
      v[i + 2] /= (float) length;
    }
  }

  /** Writes an ear-frame vector as one of the scene (x right, y down, z into the picture). */
  static void toScene(float[] ear, int from, float[] scene, int to, boolean mirrored) {
    scene[to] = mirrored ? -ear[from + 1] : ear[from + 1];
    scene[to + 1] = -ear[from + 2];
    scene[to + 2] = -ear[from];
  }

  /** A scene point as a place in the ear frame. */
  static Spot toEar(double x, double y, double z, boolean mirrored) {
    return new Spot(-z, mirrored ? -x : x, -y);
  }
}
