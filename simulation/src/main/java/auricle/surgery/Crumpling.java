package auricle.surgery;

import auricle.mesh.Directors;
import auricle.mesh.Topology;

/**
 * Whether a sheet is crumpled: folded along single edges of its mesh, more sharply than the mesh
 * can follow. Curvature is measured by sines of tilts, which saturate: an edge along which the
 * surface turns by more than some 70 deg is on its way to fold like no shell would (THEORY.md,
 * section 14), and where many do, a state of rest is one of the mesh rather than of the ear there.
 */
final class Crumpling {
  /** What a state of rest in which the sheet is crumpled comes with. */
  static final String WORDS =
      "the sheet is crumpled, folded more sharply than this mesh can follow: figures from near there are doubtful, less should be asked of it";

  /** A turn along one edge that is no bend any more, rad. */
  private static final double SHARP = 1.2;

  /**
   * So many sharp edges are no single crease: folds that came to rest had up to a dozen on the way,
   * a loop drawn together like a purse fifty. Our own bound.
   */
  private static final int MANY = 30;

  private final Topology topology;
  private final Directors directors;

  Crumpling(Topology topology, Directors directors) {
    this.topology = topology;
    this.directors = directors;
  }

  /** Looks at a state; the directors are those of that state. */
  boolean crumpled(double[] u) {
    double[] d = new double[6];
    double least = Math.cos(SHARP);
    int sharp = 0;
    for (int e = 0; e < topology.edgeCount(); e++) {
      directors.value(topology.edgeStart(e), u, d, 0);
      directors.value(topology.edgeEnd(e), u, d, 3);
      sharp += d[0] * d[3] + d[1] * d[4] + d[2] * d[5] < least ? 1 : 0;
    }
    return sharp > MANY;
  }
}
