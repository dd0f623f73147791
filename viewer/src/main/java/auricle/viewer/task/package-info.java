/**
 * Work off the screen's thread: what computes, its results, and the queue in which the latest wins.
 */
@NullMarked
package auricle.viewer.task;

import org.jspecify.annotations.NullMarked;
