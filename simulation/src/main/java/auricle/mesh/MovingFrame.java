package auricle.mesh;

/**
 * Frames in which some unknowns are measured and which follow them, so that large turns are built
 * up of small ones. The state of a body is its unknowns <em>and</em> its frames: save and restore
 * both together.
 */
public interface MovingFrame {
  /** No frames. */
  MovingFrame NONE =
      new MovingFrame() {
        @Override
        public void rebase(double[] u) {}

        @Override
        public double[] save() {
          return new double[0];
        }

        @Override
        public void restore(double[] saved) {}
      };

  /**
   * Moves the frames to where u has got and rewrites u so that it means the same. Called between
   * iterations only.
   */
  void rebase(double[] u);

  /** A copy of the frames. */
  double[] save();

  /** Takes back frames got from {@link #save}. */
  void restore(double[] saved);
}
