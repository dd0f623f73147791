/**
 * Operations on the ear as mechanics. Each changes one of the rest metric, the rest curvature, the
 * section, a thread, a contact or a support of one body; what the other thirds of the ear do about
 * it comes out of the equilibrium.
 */
@NullMarked
package auricle.surgery;

import org.jspecify.annotations.NullMarked;
