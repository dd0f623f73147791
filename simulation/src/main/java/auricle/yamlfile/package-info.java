/**
 * YAML files that a JSON Schema describes: the tree with the place of every key, and what is wrong
 * with it as findings with line and column.
 */
@NullMarked
package auricle.yamlfile;

import org.jspecify.annotations.NullMarked;
