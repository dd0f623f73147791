/** What is seen: surfaces as meshes, the camera, colours, cuts through the ear. */
@NullMarked
package auricle.viewer.scene;

import org.jspecify.annotations.NullMarked;
