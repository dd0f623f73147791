package auricle.energy;

import auricle.mesh.RestShape;

/**
 * Tells whether a rest strain between two shapes has to be read again: the load factor is set
 * oftener than it or a shape changes.
 */
final class RestWatch {
  private final RestShape start;
  private final RestShape grown;
  private double loadFactor = Double.NaN;
  private int startRevision;
  private int grownRevision;

  RestWatch(RestShape start, RestShape grown) {
    this.start = start;
    this.grown = grown;
  }

  /** Whether anything is otherwise than at the call before; true at the first. */
  boolean changed(double now) {
    boolean same =
        now == loadFactor && startRevision == start.revision() && grownRevision == grown.revision();
    loadFactor = now;
    startRevision = start.revision();
    grownRevision = grown.revision();
    return !same;
  }
}
