/** Section stiffness of a through-thickness laminate, and the materials it is made of. */
@NullMarked
package auricle.material;

import org.jspecify.annotations.NullMarked;
