/**
 * The YAML model file of the analyse command: schema, validation, findings with line and column.
 */
@NullMarked
package auricle.modelfile;

import org.jspecify.annotations.NullMarked;
