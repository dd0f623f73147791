package auricle.surgery;

import auricle.mesh.RestShape;

/**
 * A shell that is scored, with its cuts as they stand at one place: those that are shut there are
 * as good as uncut, and have left a turn in the rest shape; the others stay open.
 *
 * @param rest shape in which nothing is strained
 * @param sections of all triangles
 */
public record ShutShell(RestShape rest, BodySections sections) {}
