package auricle.mesh;

/**
 * The unit surface normals carried by the vertices (the directors) and the frames in which their
 * two unknown tilts are measured.
 *
 * <p>Director i is d = v / |v|, v = d* + w1 m1 + w2 m2, with an orthonormal frame (d*, m1, m2) kept
 * here and the tilts w1, w2 among the unknowns. {@link #rebase} moves the frame to the present
 * director and sets the tilts to zero, so that turns of any size are built up of small ones. It is
 * called between iterations only; the state of a shell is therefore the unknowns <em>and</em> the
 * directors, saved and restored together.
 */
public final class Directors implements MovingFrame {
  /** Length of the block that {@link #derivatives} fills. */
  public static final int BLOCK = 18;

  private final Unknowns unknowns;
  private final double[] frames;

  /**
   * @param unknowns layout of the unknowns
   * @param normals three components a director; made unit here
   * @throws IllegalArgumentException if a normal has no direction
   */
  public Directors(Unknowns unknowns, double[] normals) {
    this.unknowns = unknowns;
    this.frames = new double[9 * unknowns.directorCount()];
    for (int i = 0; i < unknowns.directorCount(); i++) {
      double x = normals[3 * i];
      double y = normals[3 * i + 1];
      double z = normals[3 * i + 2];
      double length = Math.sqrt(x * x + y * y + z * z);
      if (!(length > 0) || Double.isInfinite(length)) {
        throw new IllegalArgumentException("director " + i + " has no direction");
      }
      FrameMath.start(frames, 9 * i, x / length, y / length, z / length);
    }
  }

  /** Layout of the unknowns these directors belong to. */
  public Unknowns unknowns() {
    return unknowns;
  }

  /**
   * Turns the frame of a director about the director so that m2 is the part of an axis
   * perpendicular to it: fixing w2 then keeps the director from tilting towards the axis, and
   * fixing w1 keeps it from tilting across. To be called while the tilts are zero.
   *
   * @throws IllegalArgumentException if the axis is parallel to the director
   */
  public void align(int director, double ax, double ay, double az) {
    FrameMath.align(frames, 9 * director, ax, ay, az);
  }

  /** Component c (0, 1, 2) of frame vector k of a director: k = 0 is d*, 1 is m1, 2 is m2. */
  public double frame(int director, int k, int c) {
    return frames[9 * director + 3 * k + c];
  }

  /** Writes the present director (3 numbers) to {@code out} from {@code at}. */
  public void value(int director, double[] u, double[] out, int at) {
    int w = unknowns.director(director);
    FrameMath.director(frames, 9 * director, u[w], u[w + 1], out, at);
  }

  /**
   * Writes the director and its derivatives by the tilts: d, d,1, d,2, d,11, d,12, d,22; three
   * numbers each, {@link #BLOCK} in all.
   */
  public void derivatives(int director, double[] u, double[] out, int at) {
    int w = unknowns.director(director);
    FrameMath.derivatives(frames, 9 * director, u[w], u[w + 1], out, at);
  }

  /** Moves every frame to the present director (parallel transport) and zeroes the tilts in u. */
  @Override
  public void rebase(double[] u) {
    for (int i = 0; i < unknowns.directorCount(); i++) {
      int w = unknowns.director(i);
      // tilts that overflow stay: whoever evaluates them sees that they are no place to be
      double square = u[w] * u[w] + u[w + 1] * u[w + 1];
      if (square > 0 && Double.isFinite(square)) {
        FrameMath.transport(frames, 9 * i, u[w], u[w + 1]);
        u[w] = 0;
        u[w + 1] = 0;
      }
    }
  }

  /** A copy of the frames, to be given back to {@link #restore}. */
  @Override
  public double[] save() {
    return frames.clone();
  }

  /** Takes back frames got from {@link #save}. */
  @Override
  public void restore(double[] saved) {
    System.arraycopy(saved, 0, frames, 0, frames.length);
  }
}
