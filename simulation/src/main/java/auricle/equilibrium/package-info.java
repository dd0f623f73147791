/**
 * From energy terms, supports and loads to an equilibrium: assembly, load steps, path following,
 * worded outcomes.
 */
@NullMarked
package auricle.equilibrium;

import org.jspecify.annotations.NullMarked;
