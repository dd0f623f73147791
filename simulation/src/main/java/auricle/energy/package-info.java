/**
 * One file per energy term; no term knows another. Every term gives value, exact gradient and exact
 * Hessian of its own small stencil.
 */
@NullMarked
package auricle.energy;

import org.jspecify.annotations.NullMarked;
