/**
 * General shell analysis: a model of mesh, section, supports, loads, steps and probes, and the run
 * that answers it.
 */
@NullMarked
package auricle.analysis;

import org.jspecify.annotations.NullMarked;
