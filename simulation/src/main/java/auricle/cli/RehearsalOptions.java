package auricle.cli;

import auricle.anatomy.MeshLevel;
import java.nio.file.Path;
import java.util.List;

/**
 * What the command line says about a rehearsal.
 *
 * @param mesh how fine
 * @param springBack whether to follow the ear over the year
 * @param samples tissues drawn for the band
 * @param seed of the drawing
 * @param tables folders of material tables
 * @param reactions whether to find what a little more of every dose would do
 * @param quiet whether to keep silent about the progress
 */
record RehearsalOptions(
    MeshLevel mesh,
    boolean springBack,
    int samples,
    long seed,
    List<Path> tables,
    boolean reactions,
    boolean quiet) {
  RehearsalOptions {
    tables = List.copyOf(tables);
  }
}
