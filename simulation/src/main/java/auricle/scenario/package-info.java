/**
 * Scenario files: an ear or a pair, the plan, the target and what should come out, read from YAML
 * with findings at line and column, and written back.
 */
@NullMarked
package auricle.scenario;

import org.jspecify.annotations.NullMarked;
